# METADATA
# title: radiator hoses are wide enough for the pump
# description: >-
#   The coolant runs no faster than 2 m/s in the hose to the pump and 3 m/s in the hose from
#   the engine. Reducers down to the old radiator's necks starve the pump at speed: the lower
#   hose sucks flat and the pump cavitates. Not asked where the engine's maker prints no flow.
# custom:
#   level: should
#   hold: mockup
#   basis: common-practice
#   source: >-
#     common practice: 1.5 to 2 m/s on the suction side, 2.5 to 3 m/s on the pressure side
#   outcomes:
#   - met
#   - not met
#   - unproven
#   - not applicable
#   remedy: >-
#     have larger necks brazed to the radiator, or choose one with necks of the engine's
#     size, before hoses are bought
#   reviewed: 2026-11-25
#   since: 0.1.0
#   waivable: true
package rules.cooling.hose_speed

import data.lib.judge

applies := judge.when_there("build.cooling.coolant_flow")

findings contains judge.about(
	"cooling.lower_hose",
	judge.limit_max("figures.cooling.lower_hose_speed", "limits.cooling.lower_hose_speed"),
)

findings contains judge.about(
	"cooling.upper_hose",
	judge.limit_max("figures.cooling.upper_hose_speed", "limits.cooling.upper_hose_speed"),
)
