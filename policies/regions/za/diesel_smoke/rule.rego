# METADATA
# title: the smoke of the diesel is within its limit
# description: >-
#   Exhaust so dense that it is a nuisance or takes other drivers' sight is forbidden
#   outright, and regulations of 1974 bound the density of diesel smoke; officers measure it
#   on the road with an opacimeter. The figures were not read.
# related_resources:
# - ref: https://www.acts.co.za/national-road-traffic-act-1996/r225_209__exhaust_silencers_an
#   description: National Road Traffic Regulations, 2000, regulation 209
# - ref: https://citizen.co.za/carletonville-herald/news/news-news/2024/06/29/vehicles-emissions-tested-for-the-first-time
#   description: newspaper on roadside tests of 2024
# custom:
#   level: note
#   hold: inspection
#   basis: second-hand
#   source: >-
#     regulation 209(c), read; that GN R1651 of 20 September 1974 sets limits is from a
#     newspaper and a laboratory
#   outcomes:
#   - met
#   - unproven
#   - not applicable
#   remedy: have the pump set and a print of the opacity kept with the papers
#   caution: >-
#     exhaust goes outdoors; nobody stands in line with fan or belts while the throttle is
#     snapped
#   question:
#     ask: Which smoke limit is in force for this diesel, by which test, and is it met?
#     office: provincial air quality authority
#   reviewed: 2026-11-25
#   since: 0.1.0
#   waivable: true
package regions.za.diesel_smoke

import data.lib.judge

applies := judge.when("build.engine.fuel", {"diesel"})
