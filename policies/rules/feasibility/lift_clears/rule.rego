# METADATA
# title: the planned lift clears what it must pass over
# description: >-
#   By its dimensions the load clears the front panel with a hand to spare: hook height,
#   less tackle, less the depth of the load. A crane that ends too low is found out with
#   everybody standing around it.
# custom:
#   level: should
#   hold: plan
#   basis: common-practice
#   source: >-
#     common practice: 50 mm, as asked of the lift itself
#   outcomes:
#   - met
#   - not met
#   - unproven
#   - not applicable
#   remedy: >-
#     take the front panel or the bumper off, shorten the sling, lower the vehicle off its
#     wheels, or bring another crane; once tried, the headroom measured is judged instead
#   caution: >-
#     never stand or reach under a load on a hook. Lifting gear and its use come under local
#     codes: where they ask for a trained or licensed person, call one
#   reviewed: 2026-11-25
#   since: 0.1.0
#   waivable: true
package rules.feasibility.lift_clears

import data.lib.judge

applies := judge.when_listed("build.lifting.lifts")

findings contains _clears(id) if some id in judge.each("build.lifting.lifts")

# What was measured at the lift counts, in lifting/headroom.
_clears(id) := judge.unasked(headroom) if {
	headroom := judge.of(id, "build.lifting.lifts.*.headroom")
	count(judge.lacks(headroom)) == 0
} else := judge.limit_min(judge.of(id, "figures.lifting.clearance.*"), "limits.lifting.headroom")
