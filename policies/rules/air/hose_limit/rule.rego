# METADATA
# title: charge hoses bear the boost
# description: >-
#   The working pressure of the charge hoses is at least the highest boost. Coolant hose in
#   their place balloons, blows off on a grade, and the engine smokes without power.
# custom:
#   level: must
#   hold: install
#   basis: manufacturer
#   source: >-
#     working pressure from the maker of the hose
#   outcomes:
#   - met
#   - not met
#   - unproven
#   - not applicable
#   remedy: >-
#     fit charge hoses of a higher working pressure, with constant-tension clamps on beaded
#     pipes
#   caution: >-
#     let exhaust and charge pipes cool before working on them; run engines where exhaust
#     gas is drawn off
#   reviewed: 2026-11-25
#   since: 0.1.0
#   waivable: true
package rules.air.hose_limit

import data.lib.judge

applies := judge.all_of([
	judge.when_there("build.charge_air"),
	judge.unless("build.engine.induction", {"natural"}),
])

findings contains judge.about(
	"charge_air.hose_limit",
	judge.limit_max("build.charge_air.boost", "build.charge_air.hose_limit"),
)
