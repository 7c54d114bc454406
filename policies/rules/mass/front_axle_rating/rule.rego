# METADATA
# title: the front axle carries no more than its rating
# description: >-
#   The front axle load of the fully laden vehicle, by moments from the corner weights
#   before the swap, stays within the rating on the plate. An axle over its rating breaks
#   springs, bearings and the axle itself, and the authority weighs it.
# custom:
#   level: must
#   hold: plan
#   basis: manufacturer
#   source: >-
#     gross axle weight rating on the chassis maker's certification label; load by moments
#     about the axles
#   needs_basis:
#     plan: estimated
#     install: claimed
#     inspection: documented
#   outcomes:
#   - met
#   - not met
#   - unproven
#   remedy: >-
#     move mass towards the other axle, choose a lighter engine or accessories, or carry
#     less; only the maker or the authority can raise the rating
#   caution: >-
#     weigh on level ground with the wheels chocked; never work under a vehicle held by a
#     jack alone
#   reviewed: 2026-11-25
#   since: 0.1.0
#   waivable: false
package rules.mass.front_axle_rating

import data.lib.judge

findings contains judge.about(
	"chassis.ratings.front_axle",
	judge.limit_max("figures.mass.axle_load_front_laden", "build.chassis.ratings.front_axle"),
)
