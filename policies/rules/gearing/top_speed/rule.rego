# METADATA
# title: the vehicle reaches highway speed within the governor
# description: >-
#   At the engine's governed speed in top gear the vehicle does at least 100 km/h. A diesel
#   governed at 2600 rpm behind an axle geared for a petrol engine tops out where lorries
#   overtake.
# custom:
#   level: should
#   hold: plan
#   basis: common-practice
#   source: >-
#     rolling without slip; the speed wanted is common practice
#   outcomes:
#   - met
#   - not met
#   - unproven
#   - not applicable
#   remedy: >-
#     choose a taller axle ratio, an overdrive gear or larger tyres, before money is spent
#   reviewed: 2026-11-25
#   since: 0.1.0
#   waivable: true
package rules.gearing.top_speed

import data.lib.judge

# Only a diesel has a governor that ends the gear, and nobody asks a farm truck to
# keep up.
applies := judge.all_of([
	judge.unless("build.engine.fuel", {"petrol", "lpg", "cng", "electric"}),
	judge.unless("build.registration.use", {"farm"}),
])

findings contains judge.about(
	"axles.rear.ratio",
	judge.limit_min("figures.gearing.top_speed", "limits.gearing.top_speed"),
)
