# METADATA
# title: no shaft reaches its critical speed
# description: >-
#   At governed speed in top gear each shaft turns slower than the speed at which its tube
#   whirls. An overdrive turns the shaft faster than the engine, and a longer shaft whirls
#   sooner; at that speed it bends out and tears loose.
# related_resources:
# - ref: http://cardanindia.com/speedlimit.html
#   description: critical speed of a cardan shaft
# custom:
#   level: must
#   hold: install
#   basis: physics
#   source: >-
#     first bending mode of a steel tube on two supports, by the shaft makers' constant
#   outcomes:
#   - met
#   - not met
#   - unproven
#   - not applicable
#   remedy: >-
#     use a tube of larger diameter, or two shafts with a centre bearing
#   caution: >-
#     a shaft that whirls or comes off goes through the floor: keep people out of its plane
#     and fit a loop around it
#   reviewed: 2026-11-25
#   since: 0.1.0
#   waivable: true
package rules.shafts.whirl

import data.lib.judge

applies := judge.when_listed("build.shafts")

findings contains judge.limit_max(judge.of(id, "figures.shafts.critical_speed_use.*"), "limits.shafts.critical") if {
	some id in judge.each("build.shafts")
}
