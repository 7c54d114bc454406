# METADATA
# title: each axle keeps a margin below its rating
# description: >-
#   Each laden axle keeps a few per cent below its rating. A build planned to the last
#   kilogram goes over with the first winch, tank or passenger that nobody listed.
# custom:
#   level: should
#   hold: plan
#   basis: common-practice
#   source: >-
#     common practice: five per cent below the plate at planning
#   outcomes:
#   - met
#   - not met
#   - unproven
#   remedy: look for mass to save or to move while it is still on paper
#   reviewed: 2026-11-25
#   since: 0.1.0
#   waivable: true
package rules.mass.axle_margin

import data.lib.judge

findings contains judge.about(
	"chassis.ratings.front_axle",
	judge.limit_min("figures.mass.margin_front", "limits.mass.axle_margin"),
)

findings contains judge.about(
	"chassis.ratings.rear_axle",
	judge.limit_min("figures.mass.margin_rear", "limits.mass.axle_margin"),
)
