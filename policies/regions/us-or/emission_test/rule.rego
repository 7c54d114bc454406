# METADATA
# title: the emission test that is due has been passed
# description: >-
#   Vehicles of 1975 and later are tested in the Portland area, in the Medford area
#   those of at most 20 model years; the areas are drawn through the counties named.
#   Light diesels up to 1996 take the basic test, later ones the diagnostics test, with
#   no unready monitor for diesels of 1997 to 2008 and one from 2009. Farm vehicles and
#   special-interest vehicles kept for exhibition are out. Outside both areas nothing is
#   tested, which is not to say that anything goes.
# related_resources:
# - ref: https://www.law.cornell.edu/regulations/oregon/OAR-340-256-0300
#   description: OAR 340-256-0300, scope of the inspection
# - ref: https://d1tvxue8o4w0fl.cloudfront.net/regulation/oregon-administrative-code/chapter-340-department-of-environmental-quality/division-256-motor-vehicles/section-340-256-0355-emission-control-system-inspection-emissions-control-test-method-for-obd-test-program
#   description: OAR 340-256-0355, diagnostics test
# - ref: https://law.onecle.com/oregon/815-vehicle-equipment-generally/815.300.html
#   description: ORS 815.300, copy of about 2007
# - ref: https://trellis.law/state-rules/or/administrative-rules/chapter-340-department-environmental-quality/division-256-motor-vehicles/section-340-256-0200-certification-of-pollution-control-systems-county-designations
#   description: OAR 340-256-0200, counties designated
# custom:
#   level: note
#   hold: inspection
#   basis: regulation
#   source: >-
#     OAR 340-256-0300(1) and 340-256-0355; the Medford age by ORS 815.300 in a copy of
#     about 2007; the boundaries themselves were not read
#   outcomes:
#   - met
#   - unproven
#   - not applicable
#   remedy: >-
#     look the address up in the boundary, and have the vehicle tested before title and
#     plates are applied for
#   question:
#     ask: >-
#       Is the address in the Portland or the Medford area, which test does the vehicle
#       take with its new engine, and has it passed?
#     office: Oregon Department of Environmental Quality, vehicle inspection
#   reviewed: 2026-11-25
#   since: 0.1.0
#   waivable: true
package regions["us-or"].emission_test

import data.lib.judge

applies := judge.all_of([
	judge.when("build.engine.fuel", {"diesel", "petrol", "lpg", "cng"}),
	judge.unless("build.registration.use", {"farm"}),
	judge.any_of([
		judge.all_of([
			judge.when_zone({"Clackamas", "Columbia", "Marion", "Multnomah", "Washington", "Yamhill"}),
			judge.when_min("build.chassis.model_year", "limits.us_or.tested_year"),
		]),
		judge.all_of([
			judge.when_zone({"Jackson"}),
			judge.when_max("figures.approval.age_by_model_year", "limits.us_or.medford_age"),
		]),
	]),
])
