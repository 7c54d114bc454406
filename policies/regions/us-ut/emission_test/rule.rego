# METADATA
# title: the emission inspection that is due has been passed
# description: >-
#   Four counties, and Cache at second hand, want a certificate before registration for
#   vehicles of 1968 and later; each makes its own rule. Salt Lake county leaves out
#   diesels of 1997 and older below 14,000 lb. Utah county is said to check diesels by
#   eye from 1997 and through their diagnostics from 2007, the five newest years
#   excepted. Custom vehicles and older vintage plates can be out, by county.
# related_resources:
# - ref: https://mved.utah.gov/register/inspections
#   description: Utah Division of Motor Vehicles on inspections, 2025
# - ref: https://lexace.ai/us/statute/utah/41-6a-1642
#   description: Utah Code 41-6a-1642
# - ref: https://lf-public.deq.utah.gov/WebLink/DocView.aspx?dbid=0&id=476801&repo=Public
#   description: Utah state implementation plan, section X part A, of 7 February 2024
# custom:
#   level: note
#   hold: inspection
#   basis: agency-guidance
#   source: >-
#     page of the Utah Division of Motor Vehicles on inspections, Salt Lake county,
#     2025; Utah Code 41-6a-1642(1)(a); Utah county by a news report of 2018; the rules
#     of the other counties were not read
#   outcomes:
#   - met
#   - unproven
#   - not applicable
#   remedy: >-
#     ask the county before the engine with its diagnostics is gone, and have the fuel
#     on the title changed first
#   question:
#     ask: >-
#       Is this vehicle, by county, fuel, model year and plates, in the emission
#       inspection, and has it passed with its new engine?
#     office: health department of the county, vehicle emissions
#   reviewed: 2026-11-25
#   since: 0.1.0
#   waivable: true
package regions["us-ut"].emission_test

import data.lib.judge

# A diesel that is one on record and in fact, and old enough, is out in Salt Lake county.
_left_out := judge.all_of([
	judge.when_zone({"Salt Lake"}),
	judge.when("build.engine.fuel", {"diesel"}),
	judge.when("build.registration.title_fuel", {"diesel"}),
	judge.negate(judge.when_min("build.chassis.model_year", "limits.us_ut.diesel_year")),
	judge.negate(judge.when_min("build.chassis.ratings.gross", "limits.us_ut.diesel_gross")),
])

applies := judge.all_of([
	judge.when_zone({"Cache", "Davis", "Salt Lake", "Utah", "Weber"}),
	judge.when_min("build.chassis.model_year", "limits.us_ut.tested_year"),
	judge.when("build.engine.fuel", {"diesel", "petrol", "lpg", "cng"}),
	judge.negate(_left_out),
])
