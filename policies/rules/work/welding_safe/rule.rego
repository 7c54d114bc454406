# METADATA
# title: tank out and electrics off before the frame was welded
# description: >-
#   The fuel tank was out or purged, the batteries off and the control units unplugged for
#   each weld on the vehicle. Vapour in a tank that looks empty goes off a spatter; welding
#   current takes its way through alternator and control units.
# custom:
#   level: should
#   hold: mockup
#   basis: common-practice
#   source: >-
#     common practice for welding on vehicles; local rules for hot work come first
#   outcomes:
#   - met
#   - not met
#   - unproven
#   - not applicable
#   remedy: >-
#     take the tank out or have it purged, disconnect every battery, unplug the control
#     units, and clamp the earth beside the weld; off-vehicle where the part was welded on
#     the bench
#   caution: >-
#     hot work: extinguisher at hand, a second person to watch, and an hour of watching
#     afterwards; tanks are purged by who is trained for it; zinc fumes poison
#   reviewed: 2026-11-25
#   since: 0.1.0
#   waivable: true
package rules.work.welding_safe

import data.lib.judge

applies := judge.when_listed("build.frame.welds")

findings contains judge.one_of(_tank(id), {"out", "purged", "off-vehicle"}) if {
	some id in judge.each("build.frame.welds")
}

findings contains judge.one_of(judge.of(id, "build.frame.welds.*.batteries_off"), {true}) if {
	some id in judge.each("build.frame.welds")
	not judge.holds(_tank(id), "off-vehicle")
}

findings contains judge.one_of(judge.of(id, "build.frame.welds.*.units_unplugged"), {true, "none"}) if {
	some id in judge.each("build.frame.welds")
	not judge.holds(_tank(id), "off-vehicle")
}

_tank(id) := judge.of(id, "build.frame.welds.*.tank")
