# METADATA
# title: the front tyres carry the front axle rating
# description: >-
#   The load index of the front tyres, times their number, covers the axle rating; passenger
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
package rules.mass.front_tyres

import data.lib.judge

findings contains judge.about(
	"chassis.tyres.front_load_index",
	judge.limit_min("figures.mass.tyre_capacity_front", "build.chassis.ratings.front_axle"),
)
