# METADATA
# title: the rear tyres carry the rear axle rating
# description: >-
#   The load index of the rear tyres, times their number, covers the axle rating; passenger
#   tyres on a truck count for less. A tyre below its load runs hot and bursts.
# custom:
#   level: must
#   hold: install
#   basis: manufacturer
#   source: >-
#     load index on the tyre's sidewall; division by 1.10 for passenger tyres on trucks from
#     memory of 49 CFR 571.110
#   outcomes:
#   - met
#   - not met
#   - unproven
#   remedy: fit tyres with a higher load index
#   reviewed: 2026-11-25
#   since: 0.1.0
#   waivable: false
package rules.mass.rear_tyres

import data.lib.judge

findings contains judge.about(
	"chassis.tyres.rear_load_index",
	judge.limit_min("figures.mass.tyre_capacity_rear", "build.chassis.ratings.rear_axle"),
)
