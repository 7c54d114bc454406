# METADATA
# title: on-board diagnostics answer at the inspection
# description: >-
#   In every county the inspection of a vehicle below 8,501 lb talks to its on-board
#   diagnostics: petrol from 1996, diesel from 1997. A mechanical engine in such a
#   chassis has nothing to answer with and fails. Vehicles titled custom or homemade are
#   out, and age is asked about elsewhere: emission_exempt.
# related_resources:
# - ref: https://regulations.justia.com/states/new-york/title-15/chapter-i/subchapter-f/part-79/section-79-24/
#   description: 15 NYCRR 79.24, emission inspection
# custom:
#   level: must
#   hold: plan
#   basis: regulation
#   source: >-
#     15 NYCRR 79.24; vehicles above 25 model years and on historic plates are left to a
#     question, because their exemption is second-hand. The two newest model years are
#     said to be exempt as well and are not
#   needs_basis:
#     inspection: documented with evidence
#   outcomes:
#   - met
#   - not met
#   - unproven
#   - not applicable
#   remedy: >-
#     choose a donor whose own diagnostics come with it; ask an inspection station
#     before anything else
#   reviewed: 2026-11-25
#   since: 0.1.0
#   waivable: true
package regions["us-ny"].diagnostics

import data.lib.judge

applies := judge.all_of([
	judge.negate(judge.when_min("build.chassis.ratings.gross", "limits.us_ny.diagnostics_below")),
	judge.when_max("figures.approval.age_by_model_year", "limits.us_ny.tested_to_age"),
	judge.negate(judge.when("build.registration.plate_class", {"custom", "assembled", "historic"})),
	judge.any_of([
		judge.all_of([
			judge.when("build.engine.fuel", {"diesel"}),
			judge.when_min("build.chassis.model_year", "limits.us_ny.diagnostics_diesel_year"),
		]),
		judge.all_of([
			judge.when("build.engine.fuel", {"petrol", "lpg", "cng"}),
			judge.when_min("build.chassis.model_year", "limits.us_ny.diagnostics_petrol_year"),
		]),
	]),
])

findings contains judge.one_of("build.engine.diagnostics", {true})
