# METADATA
# title: back pressure is within the engine limit
# description: >-
#   At governed speed and full load the pressure behind the turbine is no more than the
#   engine's maker allows. A pipe a size too small costs power and heats the turbine.
# custom:
#   level: must
#   hold: road-test
#   basis: manufacturer
#   source: >-
#     highest back pressure from the engine maker's data sheet
#   needs_basis:
#     road-test: measured
#   outcomes:
#   - met
#   - not met
#   - unproven
#   - not applicable
#   remedy: >-
#     fit a larger pipe or a freer muffler, and wider bends
#   caution: >-
#     let exhaust and charge pipes cool before working on them; run engines where exhaust
#     gas is drawn off
#   reviewed: 2026-11-25
#   since: 0.1.0
#   waivable: true
package rules.exhaust.back_pressure

import data.lib.judge

applies := judge.when_there("build.exhaust.back_pressure_limit")

findings contains judge.about(
	"exhaust.back_pressure",
	judge.limit_max("build.exhaust.back_pressure", "build.exhaust.back_pressure_limit"),
)
