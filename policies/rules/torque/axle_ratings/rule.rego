# METADATA
# title: each axle takes the torque that reaches it
# description: >-
#   The torque at the wheels in first low, or that at which the tyres slip where it is less,
#   is no more than the axle may take for short, or the engine has no more torque than one
#   that the chassis was sold with before the same gears and axles. A locked transfer case
#   sends all of it to one axle; the ring gear goes first, and takes the pinion with it.
# custom:
#   level: should
#   hold: plan
#   basis: manufacturer
#   source: >-
#     the axle maker's short-duration output torque; friction of 0.71 between tyre and road;
#     advice, because few makers publish it for light axles
#   outcomes:
#   - met
#   - not met
#   - unproven
#   remedy: >-
#     use a stronger axle, smaller tyres, or a taller low range; until then use low range
#     with care where the tyres grip
#   reviewed: 2026-11-25
#   since: 0.1.0
#   waivable: true
package rules.torque.axle_ratings

import data.lib.judge

findings contains judge.about(
	"axles.rear.torque_rating",
	judge.rated_or_sold(judge.limit_max("figures.torque.axle_rear_use", "limits.torque.rating")),
)

findings contains judge.about(
	"axles.front.torque_rating",
	judge.rated_or_sold(judge.limit_max("figures.torque.axle_front_use", "limits.torque.rating")),
) if {
	not judge.is_none("build.axles.front.ratio")
}
