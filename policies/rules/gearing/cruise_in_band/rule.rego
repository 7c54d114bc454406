# METADATA
# title: cruising speed lies in the economical band
# description: >-
#   At 100 km/h in top gear the engine turns within the band of speeds where it burns least
#   fuel for its power. Geared too short it is loud and thirsty, too tall it lugs and runs
#   hot.
# custom:
#   level: should
#   hold: plan
#   basis: manufacturer
#   source: >-
#     the engine maker's fuel map; rolling without slip
#   outcomes:
#   - met
#   - not met
#   - unproven
#   - not applicable
#   remedy: >-
#     choose an axle ratio, top gear and tyres that bring 100 km/h into the band
#   reviewed: 2026-11-25
#   since: 0.1.0
#   waivable: true
package rules.gearing.cruise_in_band

import data.lib.judge

# Makers of petrol engines print no such band, and a farm truck does not cruise.
applies := judge.all_of([
	judge.unless("build.engine.fuel", {"petrol", "lpg", "cng", "electric"}),
	judge.unless("build.registration.use", {"farm"}),
])

findings contains judge.about("axles.rear.ratio", judge.within(
	"figures.gearing.cruise_speed",
	"build.engine.economy_low",
	"build.engine.economy_high",
))
