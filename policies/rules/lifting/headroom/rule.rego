# METADATA
# title: the hook rises high enough to clear the bay
# description: >-
#   At full lift the load clears what it must pass over, with a hand to spare. A lift that
#   ends a finger too low is finished by pulling and levering on a hanging engine.
# custom:
#   level: should
#   hold: mockup
#   basis: common-practice
#   source: >-
#     common practice: try the reach before the day of the lift
#   outcomes:
#   - met
#   - not met
#   - unproven
#   - not applicable
#   remedy: >-
#     shorten the slings, deflate the tyres or take the grille panel out
#   caution: >-
#     never stand or reach under a load on a hook; lower it onto stands before working on
#     it. Lifting gear and its use come under local codes: where they ask for a trained or
#     licensed person, call one
#   reviewed: 2026-11-25
#   since: 0.1.0
#   waivable: false
package rules.lifting.headroom

import data.lib.judge

applies := judge.when_listed("build.lifting.lifts")

findings contains judge.limit_min(
	judge.of(id, "build.lifting.lifts.*.headroom"),
	"limits.lifting.headroom",
) if {
	some id in judge.each("build.lifting.lifts")
}
