# METADATA
# title: the controls that the inspection looks for are known
# description: >-
#   What is not in the diagnostics inspection, for its years or because it is titled
#   custom or homemade, is checked by eye for its emission controls, on a shorter list
#   for those titles. Which list a petrol chassis with a diesel is held to was not read.
# related_resources:
# - ref: https://regulations.justia.com/states/new-york/title-15/chapter-i/subchapter-f/part-79/section-79-24/
#   description: 15 NYCRR 79.24, emission inspection
# custom:
#   level: note
#   hold: plan
#   basis: regulation
#   source: >-
#     15 NYCRR 79.24, low enhanced inspection; how it treats a changed engine or a
#     diesel was not found
#   outcomes:
#   - met
#   - unproven
#   - not applicable
#   remedy: >-
#     take the list of controls of the chassis and of the donor to a station before the
#     old ones are thrown away
#   question:
#     ask: >-
#       Which emission controls does the inspection look for on this chassis with this
#       engine, under the title it will have?
#     office: New York State Department of Motor Vehicles, vehicle safety
#   reviewed: 2026-11-25
#   since: 0.1.0
#   waivable: true
package regions["us-ny"].control_check

import data.lib.judge

applies := judge.all_of([
	judge.negate(judge.when_min("build.chassis.ratings.gross", "limits.us_ny.diagnostics_below")),
	judge.when_differs("build.outgoing_engine.family", "build.engine.family"),
	judge.any_of([
		judge.when("build.registration.plate_class", {"custom", "assembled"}),
		judge.negate(judge.any_of([
			judge.all_of([
				judge.when("build.engine.fuel", {"diesel"}),
				judge.when_min("build.chassis.model_year", "limits.us_ny.diagnostics_diesel_year"),
			]),
			judge.all_of([
				judge.when("build.engine.fuel", {"petrol", "lpg", "cng"}),
				judge.when_min("build.chassis.model_year", "limits.us_ny.diagnostics_petrol_year"),
			]),
		])),
	]),
])
