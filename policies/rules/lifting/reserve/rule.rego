# METADATA
# title: crane and sling keep a reserve for jerks
# description: >-
#   The load takes no more than four fifths of what the plate of the crane and the tag of
#   the sling allow. A valve opened too fast or an engine that comes free of its mounts all
#   at once adds a quarter.
# custom:
#   level: should
#   hold: mockup
#   basis: common-practice
#   source: >-
#     common practice: load no more than 80 per cent of the rating
#   outcomes:
#   - met
#   - not met
#   - unproven
#   - not applicable
#   remedy: >-
#     lift in smaller pieces, or bring larger gear
#   caution: >-
#     never stand or reach under a load on a hook; lower it onto stands before working on
#     it. Lifting gear and its use come under local codes: where they ask for a trained or
#     licensed person, call one
#   reviewed: 2026-11-25
#   since: 0.1.0
#   waivable: false
package rules.lifting.reserve

import data.lib.judge

applies := judge.when_listed("build.lifting.lifts")

findings contains judge.limit_max(judge.of(id, path), "limits.lifting.use") if {
	some id in judge.each("build.lifting.lifts")
	some path in ["figures.lifting.crane_use.*", "figures.lifting.leg_use.*"]
}
