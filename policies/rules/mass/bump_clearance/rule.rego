# METADATA
# title: swap and load leave room to the bump stops
# description: >-
#   Fully laden, each axle has used no more than half of its clearance to the bump stops. An
#   axle that rides near its stops hammers the frame through them, and cracks come where the
#   stop is welded on.
# custom:
#   level: should
#   hold: mockup
#   basis: common-practice
#   source: >-
#     common practice: half of the clearance as found is left for the road
#   outcomes:
#   - met
#   - not met
#   - unproven
#   remedy: >-
#     order stiffer springs for that axle, or carry less over it; never cut the bump stops
#   reviewed: 2026-11-25
#   since: 0.1.0
#   waivable: true
package rules.mass.bump_clearance

import data.lib.judge

findings contains judge.about("chassis.springs.front_bump", judge.limit_max("figures.mass.bump_use_front", "limits.mass.bump_use"))

findings contains judge.about("chassis.springs.rear_bump", judge.limit_max("figures.mass.bump_use_rear", "limits.mass.bump_use"))
