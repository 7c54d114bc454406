# METADATA
# title: exhaust gas is no hotter than the engine bears
# description: >-
#   At full load the gas behind the turbine is no hotter than the engine's maker allows. A
#   pump turned up for the new gearing, a choked air cleaner or thin air shows here first;
#   then pistons and turbine melt.
# custom:
#   level: should
#   hold: road-test
#   basis: manufacturer
#   source: >-
#     highest exhaust temperature from the engine maker's data sheet, for the place where it
#     is measured
#   needs_basis:
#     road-test: measured
#   outcomes:
#   - met
#   - not met
#   - unproven
#   - not applicable
#   remedy: >-
#     turn the pump back to its setting, and look for lost boost, a tight intake and late
#     injection
#   caution: >-
#     let exhaust and charge pipes cool before working on them; run engines where exhaust gas
#     is drawn off
#   reviewed: 2026-11-25
#   since: 0.1.0
#   waivable: true
package rules.exhaust.temperature

import data.lib.judge

applies := judge.all_of([
	judge.when("build.engine.fuel", {"diesel"}),
	judge.when_there("build.exhaust.temperature_limit"),
])

findings contains judge.about(
	"exhaust.temperature",
	judge.limit_max("build.exhaust.temperature", "build.exhaust.temperature_limit"),
)
