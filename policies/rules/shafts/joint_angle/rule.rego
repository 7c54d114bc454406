# METADATA
# title: no joint bends further than its speed allows
# description: >-
#   The working angle of each joint stays within what makers allow at the speed of the
#   shaft, which an overdrive raises; a joint of constant velocity made of two halves it.
#   Beyond, the needles wear grooves in weeks and gearbox housings crack. A shaft to the
#   front axle, which runs loaded only where it is slow, is looked at apart.
# related_resources:
# - ref: https://manualarchiveguide.com/manuals/Parker-892-Series-Owner-s-Manual-4054751?page=9
#   description: joint angle by shaft speed
# custom:
#   level: must
#   hold: install
#   basis: manufacturer
#   source: >-
#     joint makers' table of working angle by shaft speed; the true angle from side view and
#     plan
#   outcomes:
#   - met
#   - not met
#   - unproven
#   - not applicable
#   remedy: >-
#     shim or tilt engine, transfer case or pinion, lengthen the shaft, or use a joint of
#     constant velocity
#   caution: >-
#     chock the wheels before going under; a vehicle on its wheels over a pit or on ramps,
#     never on a jack alone
#   reviewed: 2026-11-25
#   since: 0.1.0
#   waivable: true
package rules.shafts.joint_angle

import data.lib.judge

applies := judge.when_listed("build.shafts")

_limit := {"cardan": "limits.shafts.table", "constant-velocity": "limits.shafts.table_two_joints"}

_driving(id) := judge.limit_max_for(
	judge.of(id, "figures.shafts.angle_driving_end_use.*"),
	judge.of(id, "build.shafts.*.joint_driving"),
	_limit,
)

_finding(id) := judge.unasked(drives) if {
	drives := judge.of(id, "build.shafts.*.drives")
	judge.holds(drives, "front-axle")
} else := _driving(id) if {
	judge.holds(judge.of(id, "build.shafts.*.joint_driven"), "rigid")
} else := judge.worst([
	_driving(id),
	judge.limit_max_for(
		judge.of(id, "figures.shafts.angle_driven_end_use.*"),
		judge.of(id, "build.shafts.*.joint_driven"),
		_limit,
	),
])

findings contains _finding(id) if some id in judge.each("build.shafts")
