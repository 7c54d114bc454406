# METADATA
# title: no shaft bottoms or pulls apart
# description: >-
#   At full bump the slip joint has not bottomed, at full droop its splines still engage as
#   far as their maker asks. A shaft that bottoms breaks the transfer case behind the bump;
#   one that pulls apart digs into the road.
# custom:
#   level: must
#   hold: install
#   basis: physics
#   source: >-
#     lengths between joint centres at both ends of the travel and at both ends of the slip
#   needs_basis:
#     install: documented
#   outcomes:
#   - met
#   - not met
#   - unproven
#   - not applicable
#   remedy: >-
#     have the shaft made longer or shorter, or fit a slip joint with more travel
#   caution: >-
#     springs and axle store force: lower and raise them on stands and a jack under the
#     axle, nobody under the vehicle
#   reviewed: 2026-11-25
#   since: 0.1.0
#   waivable: true
package rules.shafts.slip_ends

import data.lib.judge

applies := judge.when_listed("build.shafts")

# A centre bearing does not move with the axle: the slip is in the piece behind it.
_finding(id) := judge.unasked(drives) if {
	drives := judge.of(id, "build.shafts.*.drives")
	judge.holds(drives, "centre-bearing")
} else := judge.worst([
	judge.limit_min(judge.of(id, "figures.shafts.slip_left_bump.*"), "limits.shafts.slip_least"),
	judge.limit_min(judge.of(id, "figures.shafts.slip_left_droop.*"), "limits.shafts.slip_least"),
])

findings contains _finding(id) if some id in judge.each("build.shafts")
