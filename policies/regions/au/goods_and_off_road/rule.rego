# METADATA
# title: what a goods or off-road vehicle needs is settled
# description: >-
#   Most working four-wheel drives are of category NA, NB1 or MC, for which the capacity
#   table is not run. That is no licence: what the engineer wants to see of brakes, chassis,
#   axles and driveline instead of a limit was not found in any text.
# related_resources:
# - ref: https://fbekholden.com/forum/viewtopic.php?p=275291
#   description: an owner quoting section 2.13
# custom:
#   level: note
#   hold: plan
#   basis: second-hand
#   source: reference notes on section 2.13 of VSB 14 section LA as owners quote it
#   outcomes:
#   - met
#   - unproven
#   - not applicable
#   remedy: >-
#     agree with the engineer on brakes, axle masses, driveline and tests before the donor
#     is bought
#   question:
#     ask: >-
#       No recommended capacity is set for this category: which power and torque is accepted
#       with these brakes, axles and chassis, and which tests are asked?
#     office: registration authority of the state, and the engineer it recognises
#   reviewed: 2026-11-25
#   since: 0.1.0
#   waivable: true
package regions.au.goods_and_off_road

import data.lib.judge

applies := judge.all_of([
	judge.when_differs("build.outgoing_engine.family", "build.engine.family"),
	judge.when("build.chassis.approval_category", {"MC", "NA", "NB1"}),
])
