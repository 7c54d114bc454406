# METADATA
# title: the vehicle is out of the emission inspection
# description: >-
#   A vehicle of 1996 or later that is more than 25 model years old, or on historic
#   plates, is said to take no emission inspection. If that is not so, a mechanical
#   engine in it can not pass. The safety inspection stays yearly in any case.
# related_resources:
# - ref: https://regulations.justia.com/states/new-york/title-15/chapter-i/subchapter-f/part-79/section-79-24/
#   description: 15 NYCRR 79.24, emission inspection
# custom:
#   level: note
#   hold: plan
#   basis: second-hand
#   source: >-
#     reference notes on the age and plate exemption, from an owners' association; 15
#     NYCRR 79.24 names no age in the part that was read
#   outcomes:
#   - met
#   - unproven
#   - not applicable
#   remedy: >-
#     have the exemption confirmed before the engine with the diagnostics leaves the
#     vehicle
#   question:
#     ask: >-
#       Is this vehicle, by its age or by its plates, outside the emission inspection,
#       and does the engine change alter that?
#     office: New York State Department of Motor Vehicles, vehicle safety
#   reviewed: 2026-11-25
#   since: 0.1.0
#   waivable: true
package regions["us-ny"].emission_exempt

import data.lib.judge

applies := judge.all_of([
	judge.negate(judge.when_min("build.chassis.ratings.gross", "limits.us_ny.diagnostics_below")),
	judge.when_min("build.chassis.model_year", "limits.us_ny.diagnostics_petrol_year"),
	judge.any_of([
		judge.when("build.registration.plate_class", {"historic"}),
		judge.negate(judge.when_max("figures.approval.age_by_model_year", "limits.us_ny.tested_to_age")),
	]),
])
