# METADATA
# title: each shaft keeps an inch of slip at both ends
# description: >-
#   25 mm of slip are left at full bump and at full droop. Bump stops give, springs wrap up
#   under torque and the frame twists, and all of it is taken from the slip.
# custom:
#   level: should
#   hold: install
#   basis: common-practice
#   source: >-
#     common practice: an inch at either end
#   outcomes:
#   - met
#   - not met
#   - unproven
#   - not applicable
#   remedy: >-
#     have the shaft made so that it rides in the middle of its slip
#   reviewed: 2026-11-25
#   since: 0.1.0
#   waivable: true
package rules.shafts.slip_reserve

import data.lib.judge

applies := judge.when_listed("build.shafts")

# A centre bearing does not move with the axle: the slip is in the piece behind it.
_finding(id) := judge.unasked(drives) if {
	drives := judge.of(id, "build.shafts.*.drives")
	judge.holds(drives, "centre-bearing")
} else := judge.worst([
	judge.limit_min(judge.of(id, "figures.shafts.slip_left_bump.*"), "limits.shafts.slip_reserve"),
	judge.limit_min(judge.of(id, "figures.shafts.slip_left_droop.*"), "limits.shafts.slip_reserve"),
])

findings contains _finding(id) if some id in judge.each("build.shafts")
