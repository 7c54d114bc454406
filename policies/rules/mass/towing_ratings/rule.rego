# METADATA
# title: with its trailer the vehicle stays within its ratings
# description: >-
#   Laden and with the trailer on the hitch, the rear axle, the vehicle and the combination
#   weigh no more than their ratings. A heavier engine takes its mass from the trailer as
#   well; who does not reckon it finds out on the first descent.
# custom:
#   level: must
#   hold: plan
#   basis: manufacturer
#   source: >-
#     axle and gross ratings on the chassis maker's label; combination rating from the
#     maker's towing table
#   outcomes:
#   - met
#   - not met
#   - unproven
#   - not applicable
#   remedy: >-
#     tow a lighter trailer or carry less, and write the trailer that is left into the
#     hand-over papers; none under masses.trailer where nothing is towed
#   caution: >-
#     weighing a coupled trailer: level ground, chocks under both, nobody between vehicle
#     and trailer
#   reviewed: 2026-11-25
#   since: 0.1.0
#   waivable: false
package rules.mass.towing_ratings

import data.lib.judge

applies := judge.when_there("build.masses.trailer")

findings contains judge.about(
	"chassis.ratings.rear_axle",
	judge.limit_max("figures.mass.axle_load_rear_towing", "build.chassis.ratings.rear_axle"),
)

findings contains judge.about(
	"chassis.ratings.gross",
	judge.limit_max("figures.mass.total_towing", "build.chassis.ratings.gross"),
)

# Some makers of older vehicles give no combination rating.
findings contains judge.about(
	"chassis.ratings.combination",
	judge.limit_max("figures.mass.combination", "build.chassis.ratings.combination"),
) if {
	not judge.is_none("build.chassis.ratings.combination")
}
