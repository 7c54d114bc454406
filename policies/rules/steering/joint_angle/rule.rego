# METADATA
# title: no steering joint bends further than it may
# description: >-
#   Each joint of the steering shaft that was moved or changed works within the angle its
#   maker allows. Bent further it stiffens twice in each turn of the wheel and then locks.
# custom:
#   level: must
#   hold: install
#   basis: manufacturer
#   source: >-
#     largest working angle by the maker of the joint
#   outcomes:
#   - met
#   - not met
#   - unproven
#   - not applicable
#   remedy: >-
#     route the shaft with one joint and a support bearing more, or use a double joint
#   caution: >-
#     a steering that binds once kills: turn it lock to lock at full bump before the vehicle
#     rolls; its parts come under local codes, and welding on them is for licensed hands
#   reviewed: 2026-11-25
#   since: 0.1.0
#   waivable: false
package rules.steering.joint_angle

import data.lib.judge

applies := judge.when_listed("build.steering.couplings")

findings contains judge.limit_max(
	judge.of(id, "build.steering.couplings.*.angle"),
	judge.of(id, "build.steering.couplings.*.angle_limit"),
) if {
	some id in judge.each("build.steering.couplings")
}
