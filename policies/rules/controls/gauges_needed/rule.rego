# METADATA
# title: the driver sees oil pressure and coolant temperature
# description: >-
#   The cluster shows the oil pressure and, where a liquid cools the engine, the coolant
#   temperature of the engine that is in. A diesel that has lost its water runs on until
#   it seizes, and the old lamp stays dark.
# custom:
#   level: should
#   hold: first-start
#   basis: common-practice
#   source: >-
#     common practice: oil pressure and coolant temperature, and on a turbocharged
#     engine that works hard the exhaust temperature as well
#   outcomes:
#   - met
#   - not met
#   - unproven
#   reasons:
#     no-gauge: no gauge is listed that shows it
#   remedy: fit a gauge or lamp for what is missing, with a sender of its own
#   reviewed: 2026-11-25
#   since: 0.1.0
#   waivable: true
package rules.controls.gauges_needed

import data.lib.judge

findings contains judge.because("no-gauge", judge.about(
	"controls.gauges.oil_pressure",
	judge.lists("build.controls.gauges.*.shows", "oil_pressure"),
))

findings contains judge.because("no-gauge", judge.about(
	"controls.gauges.coolant_temperature",
	judge.lists("build.controls.gauges.*.shows", "coolant_temperature"),
)) if {
	not judge.is_none("build.first_start.coolant_filled")
}
