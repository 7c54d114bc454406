# METADATA
# title: front joints suit a front axle that always drives
# description: >-
#   The working angle of each joint of the shaft to the front axle stays within what makers
#   allow at its highest speed. Where the front axle always drives it has to; one with
#   free-wheeling hubs or driven in low range only bears more.
# related_resources:
# - ref: https://manualarchiveguide.com/manuals/Parker-892-Series-Owner-s-Manual-4054751?page=9
#   description: joint angle by shaft speed
# custom:
#   level: note
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
#     where the front axle always drives, use a joint of constant velocity at the transfer
#     case and point the pinion at it
#   caution: >-
#     chock the wheels before going under; a vehicle on its wheels over a pit or on ramps,
#     never on a jack alone
#   reviewed: 2026-11-25
#   since: 0.1.0
#   waivable: true
package rules.shafts.front_joint_angle

import data.lib.judge

applies := judge.all_of([
	judge.when_listed("build.shafts"),
	judge.unless("build.axles.front.drive", {"when-engaged"}),
])

_limit := {"cardan": "limits.shafts.table", "constant-velocity": "limits.shafts.table_two_joints"}

_finding(id) := judge.unasked(drives) if {
	drives := judge.of(id, "build.shafts.*.drives")
	judge.holds(drives, "rear-axle")
} else := judge.unasked(drives) if {
	drives := judge.of(id, "build.shafts.*.drives")
	judge.holds(drives, "transfer-case")
} else := judge.unasked(drives) if {
	drives := judge.of(id, "build.shafts.*.drives")
	judge.holds(drives, "centre-bearing")
} else := judge.worst([
	judge.limit_max_for(
		judge.of(id, "figures.shafts.angle_driving_end_use.*"),
		judge.of(id, "build.shafts.*.joint_driving"),
		_limit,
	),
	judge.limit_max_for(
		judge.of(id, "figures.shafts.angle_driven_end_use.*"),
		judge.of(id, "build.shafts.*.joint_driven"),
		_limit,
	),
])

findings contains _finding(id) if some id in judge.each("build.shafts")
