# METADATA
# title: each pair of tyres keeps a margin as planned
# description: >-
#   The laden axle loads as planned take no more than 95 per cent of what the tyres on the
#   vehicle carry. Tyres are bought with the wheels, before anybody has weighed the finished
#   vehicle.
# custom:
#   level: should
#   hold: plan
#   basis: common-practice
#   source: >-
#     common practice: the margin of five per cent that the axles keep, too; load index
#     table, and division by 1.10 for passenger tyres on a truck (FMVSS 120)
#   outcomes:
#   - met
#   - not met
#   - unproven
#   remedy: >-
#     plan tyres with a higher load index, or take load off that axle
#   reviewed: 2026-11-25
#   since: 0.1.0
#   waivable: true
package rules.mass.tyre_margin

import data.lib.judge

findings contains judge.about("chassis.tyres.front_load_index", judge.limit_max("figures.mass.tyre_use_front", "limits.mass.tyre_use"))

findings contains judge.about("chassis.tyres.rear_load_index", judge.limit_max("figures.mass.tyre_use_rear", "limits.mass.tyre_use"))
