# METADATA
# title: on-board diagnostics answer at the Portland test
# description: >-
#   In the Portland area a light vehicle, petrol from 1996 and diesel from 1997, is
#   tested through its on-board diagnostics, which must match the maker's data and from
#   2005 on name the vehicle's own number. A mechanical engine has nothing to say, and
#   an engine computer from another vehicle says the wrong number.
# related_resources:
# - ref: https://www.law.cornell.edu/regulations/oregon/OAR-340-256-0300
#   description: OAR 340-256-0300, scope of the inspection
# - ref: https://d1tvxue8o4w0fl.cloudfront.net/regulation/oregon-administrative-code/chapter-340-department-of-environmental-quality/division-256-motor-vehicles/section-340-256-0355-emission-control-system-inspection-emissions-control-test-method-for-obd-test-program
#   description: OAR 340-256-0355, diagnostics test
# custom:
#   level: should
#   hold: plan
#   basis: regulation
#   source: >-
#     OAR 340-256-0300(1)(b) and 340-256-0355; whether the address lies inside the
#     boundary is asked elsewhere, so that this is advice
#   needs_basis:
#     inspection: documented
#   outcomes:
#   - met
#   - not met
#   - unproven
#   - not applicable
#   remedy: >-
#     choose a donor whose own diagnostics come with it, and ask how its computer is
#     made to name this vehicle
#   reviewed: 2026-11-25
#   since: 0.1.0
#   waivable: true
package regions["us-or"].diagnostics

import data.lib.judge

applies := judge.all_of([
	judge.when_zone({"Clackamas", "Columbia", "Marion", "Multnomah", "Washington", "Yamhill"}),
	judge.when("build.chassis.certification.class", {"light-duty"}),
	judge.any_of([
		judge.all_of([
			judge.when("build.engine.fuel", {"diesel"}),
			judge.when_min("build.chassis.model_year", "limits.us_or.diagnostics_diesel_year"),
		]),
		judge.all_of([
			judge.when("build.engine.fuel", {"petrol"}),
			judge.when_min("build.chassis.model_year", "limits.us_or.diagnostics_petrol_year"),
		]),
	]),
])

findings contains judge.one_of("build.engine.diagnostics", {true})
