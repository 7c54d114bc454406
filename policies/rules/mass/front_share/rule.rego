# METADATA
# title: the front does not carry most of the vehicle
# description: >-
#   The unladen vehicle does not lean on its front axle. A leaf-sprung 4x4 that is heavy in
#   front steers hard, brakes unevenly and settles its front springs.
# custom:
#   level: should
#   hold: plan
#   basis: common-practice
#   source: >-
#     common practice: above some 62 per cent on the front, springs and steering are looked
#     at again
#   outcomes:
#   - met
#   - not met
#   - unproven
#   remedy: >-
#     fit springs and dampers for the new load and check the steering box, or move batteries
#     and spare wheel to the rear
#   reviewed: 2026-11-25
#   since: 0.1.0
#   waivable: true
package rules.mass.front_share

import data.lib.judge

findings contains judge.about(
	"baseline.corner_weights",
	judge.limit_max("figures.mass.front_share", "limits.mass.front_share"),
)
