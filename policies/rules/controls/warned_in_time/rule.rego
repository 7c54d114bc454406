# METADATA
# title: warnings come before the engine is harmed
# description: >-
#   The oil warning comes no later than the least pressure, the coolant warning no later
#   than the highest temperature that the engine allows. The lamp switch of the old
#   engine wakes up when the bearings of the new one are already dry. The new engine's own
#   switch was set by its maker, who sets it below the least pressure that he prints.
# custom:
#   level: should
#   hold: first-start
#   basis: manufacturer
#   source: least oil pressure and highest coolant temperature from the engine's maker
#   outcomes:
#   - met
#   - not met
#   - unproven
#   - not applicable
#   remedy: fit a switch or sender with the limit of the new engine, or mark the gauge
#   reviewed: 2026-11-25
#   since: 0.1.0
#   waivable: true
package rules.controls.warned_in_time

import data.lib.judge

applies := judge.when_listed("build.controls.gauges")

findings contains judge.present_at(judge.of(id, "build.controls.gauges.*.shows"), "first-start") if {
	some id in judge.each("build.controls.gauges")
}

findings contains judge.limit_min(
	judge.of(id, "build.controls.gauges.*.warning"),
	"build.engine.oil_pressure_idle",
) if {
	some id in judge.each("build.controls.gauges")
	not _makers_own(id)
	judge.holds(judge.of(id, "build.controls.gauges.*.shows"), "oil_pressure")
}

findings contains judge.limit_max(
	judge.of(id, "build.controls.gauges.*.warning"),
	"build.cooling.top_limit",
) if {
	some id in judge.each("build.controls.gauges")
	not _makers_own(id)
	judge.holds(judge.of(id, "build.controls.gauges.*.shows"), "coolant_temperature")
}

_makers_own(id) if judge.holds(judge.of(id, "build.controls.gauges.*.engine_switch"), true)
