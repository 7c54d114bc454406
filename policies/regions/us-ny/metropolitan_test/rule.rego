# METADATA
# title: the yearly smoke test has been passed
# description: >-
#   Heavy diesels registered in New York City, on Long Island, in Westchester or
#   Rockland pass a smoke test and a look at their emission controls each year, at a
#   station for diesels. Outside that area no yearly test is due, which is not to say
#   that the limit does not hold.
# related_resources:
# - ref: https://govt.westlaw.com/nycrr/Document/I4e8f9f05cd1711dda432a117e6e0f345?viewType=FullText&originationContext=documenttoc&transitionType=CategoryPageItem&contextData=(sc.Default)
#   description: 6 NYCRR 217-5.2, applicability
# - ref: https://casetext.com/regulation/new-york-codes-rules-and-regulations/title-15-department-of-motor-vehicles/chapter-i-regulations-of-the-commissioner/subchapter-f-businesses-requiring-licenses/part-79-motor-vehicle-inspection/section-7926-vehicles-subject-to-diesel-emissions-inspection
#   description: 15 NYCRR 79.26, diesel emission inspection
# - ref: https://www.dec.ny.gov/chemical/28892.html
#   description: heavy-duty diesel program of the Department of Environmental Conservation
# custom:
#   level: note
#   hold: inspection
#   basis: regulation
#   source: >-
#     6 NYCRR 217-5.2(b); 15 NYCRR 79.26, for diesels above 8,500 lb that take no
#     diagnostics inspection; the area by a page of the Department of Environmental
#     Conservation
#   outcomes:
#   - met
#   - unproven
#   - not applicable
#   remedy: book a diesel station together with the safety inspection
#   question:
#     ask: >-
#       Has this vehicle with its new engine passed the diesel emission inspection, or
#       which of the exemptions does it come under?
#     office: New York State Department of Motor Vehicles, vehicle safety
#   reviewed: 2026-11-25
#   since: 0.1.0
#   waivable: true
package regions["us-ny"].metropolitan_test

import data.lib.judge

_area := {
	"Bronx", "Kings", "Nassau", "New York", "Queens", "Richmond", "Rockland", "Suffolk", "Westchester",
	"New York City", "Brooklyn", "Manhattan", "Staten Island", "The Bronx",
}

applies := judge.all_of([
	judge.when_zone(_area),
	judge.when("build.engine.fuel", {"diesel"}),
	judge.negate(judge.when_max("build.chassis.ratings.gross", "limits.us_ny.heavy_gross")),
])
