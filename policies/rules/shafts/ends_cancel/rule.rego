# METADATA
# title: the two ends of each shaft cancel
# description: >-
#   The working angles at the two ends are within one degree of each other, the yokes in
#   phase, so that little of the swing of the first joint is left behind the second. What is
#   left hums, wears the splines and shakes the cab. Nothing cancels the joint ahead of a
#   centre bearing: it runs within one degree of straight.
# related_resources:
# - ref: https://www.manualsdir.com/manuals/258740/spicer-driveline-installation-service-manual.html?page=13
#   description: working angles and how they cancel
# custom:
#   level: should
#   hold: install
#   basis: manufacturer
#   source: >-
#     a driveline maker's installation manual: equal within one degree; 400 rad/s² left over
#     from memory of SAE AE-7
#   outcomes:
#   - met
#   - not met
#   - unproven
#   - not applicable
#   remedy: >-
#     turn the pinion or the engine until both angles are alike, and put the yokes in line
#   caution: >-
#     chock the wheels before going under; a vehicle on its wheels over a pit or on ramps,
#     never on a jack alone
#   reviewed: 2026-11-25
#   since: 0.1.0
#   waivable: true
package rules.shafts.ends_cancel

import data.lib.judge

applies := judge.when_listed("build.shafts")

# Nothing cancels the joint ahead of a centre bearing: it must run all but straight.
_finding(id) := judge.limit_max(judge.of(id, "figures.shafts.angle_driving_end.*"), "limits.shafts.difference") if {
	judge.holds(judge.of(id, "build.shafts.*.joint_driven"), "rigid")
} else := judge.worst([
	judge.limit_max(judge.of(id, "figures.shafts.angle_difference.*"), "limits.shafts.difference"),
	judge.limit_max(judge.of(id, "figures.shafts.torsional_acceleration.*"), "limits.shafts.left_over"),
])

findings contains _finding(id) if some id in judge.each("build.shafts")
