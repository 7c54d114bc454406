# METADATA
# title: each cardan joint works at half a degree or more
# description: >-
#   Each joint of a shaft with two cardan joints bends by half a degree at least. In a joint
#   that runs dead straight the same needles stand in the same place, press dents into the
#   cross and it fails early.
# related_resources:
# - ref: https://www.manualsdir.com/manuals/258740/spicer-driveline-installation-service-manual.html?page=8
#   description: rules for joint angles
# custom:
#   level: should
#   hold: install
#   basis: manufacturer
#   source: >-
#     a driveline maker's installation manual: half a degree at each joint; an older edition
#     asks for one
#   outcomes:
#   - met
#   - not met
#   - unproven
#   - not applicable
#   remedy: >-
#     set the driving end or the pinion off the line of the shaft by half a degree to three,
#     alike at both ends
#   reviewed: 2026-11-25
#   since: 0.1.0
#   waivable: true
package rules.shafts.joint_moves

import data.lib.judge

applies := judge.when_listed("build.shafts")

_finding(id) := judge.unasked(joint) if {
	joint := judge.of(id, "build.shafts.*.joint_driving")
	judge.holds(joint, "constant-velocity")
} else := judge.unasked(joint) if {
	joint := judge.of(id, "build.shafts.*.joint_driven")
	judge.holds(joint, "constant-velocity")
} else := judge.limit_min(judge.of(id, "figures.shafts.angle_driving_end.*"), "limits.shafts.least_angle") if {
	judge.holds(judge.of(id, "build.shafts.*.joint_driven"), "rigid")
} else := judge.worst([
	judge.limit_min(judge.of(id, "figures.shafts.angle_driving_end.*"), "limits.shafts.least_angle"),
	judge.limit_min(judge.of(id, "figures.shafts.angle_driven_end.*"), "limits.shafts.least_angle"),
])

findings contains _finding(id) if some id in judge.each("build.shafts")
