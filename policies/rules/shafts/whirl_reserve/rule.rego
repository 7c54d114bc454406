# METADATA
# title: each shaft stays well below its critical speed
# description: >-
#   At governed speed in top gear each shaft turns at no more than 70 per cent of its
#   critical speed. Yokes, slip and worn joints make a real shaft whirl sooner than its tube
#   alone.
# custom:
#   level: should
#   hold: install
#   basis: memory
#   source: >-
#     from memory of shaft makers, 65 to 75 per cent of the computed critical speed
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
package rules.shafts.whirl_reserve

import data.lib.judge

applies := judge.when_listed("build.shafts")

findings contains judge.limit_max(judge.of(id, "figures.shafts.critical_speed_use.*"), "limits.shafts.critical_reserve") if {
	some id in judge.each("build.shafts")
}
