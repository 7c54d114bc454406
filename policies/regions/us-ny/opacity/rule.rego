# METADATA
# title: smoke of a heavy diesel is within its opacity limit
# description: >-
#   No heavy diesel may be operated in the state with smoke darker than the limit for
#   the model year of its engine, whatever the year of the chassis. The yearly test
#   belongs to the New York City area, the limit to every road: elsewhere it is taken at
#   the roadside. Farm, emergency and some other vehicles are exempt and not examined
#   here.
# related_resources:
# - ref: https://d1tvxue8o4w0fl.cloudfront.net/regulation/new-york-codes-rules-and-regulations/title-6-department-of-environmental-conservation/chapter-iii-air-resources/subchapter-a-prevention-and-control-of-air-contamination-and-air-pollution/part-217-motor-vehicle-emissions/subpart-217-5-heavy-duty-inspection-and-maintenance-program/section-217-53-heavy-duty-diesel-emission-standards
#   description: 6 NYCRR 217-5.3, table 1
# - ref: https://govt.westlaw.com/nycrr/Document/I4e8f9f0bcd1711dda432a117e6e0f345?viewType=FullText&originationContext=documenttoc&transitionType=CategoryPageItem&contextData=%28sc.Default%29
#   description: 6 NYCRR 217-5.4, owner and operator
# custom:
#   level: must
#   hold: inspection
#   basis: regulation
#   source: >-
#     6 NYCRR 217-5.3, table 1, and 217-5.4(a)(1), by SAE J1667. A proposal of 2022 to
#     amend the subpart is asked about elsewhere; a reading above these limits was too
#     much before it in any case
#   needs_basis:
#     inspection: documented with evidence
#   outcomes:
#   - met
#   - not met
#   - unproven
#   - not applicable
#   remedy: have the injection set by a pump shop and the reading repeated
#   caution: >-
#     exhaust gas goes outdoors, and nobody stands in line with fan or belts while the
#     throttle is snapped
#   reviewed: 2026-11-25
#   since: 0.1.0
#   waivable: true
package regions["us-ny"].opacity

import data.lib.judge

_bands := [
	{"from": "limits.us_ny.opacity_1991", "limit": "limits.us_ny.opacity_from_1991"},
	{"from": "limits.us_ny.opacity_1974", "limit": "limits.us_ny.opacity_from_1974"},
]

applies := judge.all_of([
	judge.when("build.engine.fuel", {"diesel"}),
	judge.negate(judge.when_max("build.chassis.ratings.gross", "limits.us_ny.heavy_gross")),
])

findings contains judge.about("engine.smoke_opacity", judge.limit_max_from(
	"build.engine.smoke_opacity",
	"build.engine.model_year",
	_bands,
	"limits.us_ny.opacity_before_1974",
))
