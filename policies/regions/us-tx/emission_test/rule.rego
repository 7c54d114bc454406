# METADATA
# title: the emission test that is due has been passed
# description: >-
#   Petrol vehicles of 2 to 24 model years in the listed counties are tested before
#   registration. Diesels, vehicles that can not run on petrol and antique plates are
#   out, by what the record says: a converted truck whose title still says petrol is
#   called, and a mechanical diesel answers no scan tool. Not to be tested is not to be
#   legal.
# related_resources:
# - ref: https://casetext.com/regulation/texas-administrative-code/title-30-environmental-quality/part-1-texas-commission-on-environmental-quality/chapter-114-control-of-air-pollution-from-motor-vehicles/subchapter-c-vehicle-inspection-and-maintenance-low-income-vehicle-repair-assistance-retrofit-and-accelerated-vehicle-retirement-program-and-early-action-compact-counties/division-3-early-action-compact-counties/section-11480-applicability
#   description: 30 TAC 114.80, current in June 2024
# - ref: https://19january2021snapshot.epa.gov/sips-tx/texas-sip-30-tac-11450-11453-vehicle-inspection-and-maintenance-sip-effective-2006-10-06_.html
#   description: 30 TAC 114.50 as approved in 2006
# - ref: https://www.dps.texas.gov/section/vehicle-inspection/news-and-updates
#   description: Texas Department of Public Safety on the end of safety inspections and on Bexar county
# custom:
#   level: note
#   hold: inspection
#   basis: regulation
#   source: >-
#     30 TAC 114.50(a) as approved in 2006 and 114.80(c) in the text of 2024 for scope;
#     the counties from the Texas Register of 2025; Bexar from 1 November 2026 by the
#     Department of Public Safety. That the record decides is from memory
#   outcomes:
#   - met
#   - unproven
#   - not applicable
#   remedy: >-
#     have the fuel on the title changed before the registration falls due; a petrol
#     engine is scanned with every monitor ready
#   question:
#     ask: >-
#       Is this vehicle, by title and by engine, in the emission test at its next
#       registration, and has it passed?
#     office: Texas Department of Public Safety, vehicle inspection
#   reviewed: 2026-11-25
#   since: 0.1.0
#   waivable: true
package regions["us-tx"].emission_test

import data.lib.judge

_counties := {
	"Brazoria", "Collin", "Dallas", "Denton", "El Paso", "Ellis", "Fort Bend", "Galveston", "Harris",
	"Johnson", "Kaufman", "Montgomery", "Parker", "Rockwall", "Tarrant", "Travis", "Williamson",
}

# A vehicle is called to the test as what its record says and tested as what it is.
applies := judge.all_of([
	judge.any_of([
		judge.when_zone(_counties),
		judge.all_of([
			judge.when_zone({"Bexar"}),
			judge.from_day("2026-11-01"),
		]),
	]),
	judge.when_min("figures.approval.age_by_model_year", "limits.us_tx.tested_from_age"),
	judge.when_max("figures.approval.age_by_model_year", "limits.us_tx.tested_to_age"),
	judge.negate(judge.when("build.registration.plate_class", {"historic"})),
	judge.any_of([
		judge.when("build.engine.fuel", {"petrol"}),
		judge.when("build.registration.title_fuel", {"petrol"}),
	]),
])
