# METADATA
# title: the exhaust brake stays within the engine limit
# description: >-
#   The pressure that the exhaust brake builds up is no more than the engine's maker allows.
#   Above it the exhaust valves are blown open against their springs, float, and meet the
#   pistons.
# custom:
#   level: must
#   hold: road-test
#   basis: manufacturer
#   source: >-
#     highest exhaust pressure from the engine maker's data sheet
#   outcomes:
#   - met
#   - not met
#   - unproven
#   - not applicable
#   remedy: >-
#     set the brake to a lower pressure or drill its butterfly, or fit the springs the maker
#     offers for it
#   caution: >-
#     let exhaust and charge pipes cool before working on them; run engines where exhaust
#     gas is drawn off
#   reviewed: 2026-11-25
#   since: 0.1.0
#   waivable: true
package rules.exhaust.brake_pressure

import data.lib.judge

applies := judge.all_of([
	judge.when_there("build.exhaust.brake"),
	judge.unless("build.engine.fuel", {"petrol", "lpg", "cng", "electric"}),
])

findings contains judge.about(
	"exhaust.brake.pressure",
	judge.limit_max("build.exhaust.brake.pressure", "build.exhaust.brake.pressure_limit"),
)
