# METADATA
# title: the emission test that is due has been passed
# description: >-
#   Vehicles of 1968 and later based in the urban part of Clark or Washoe county are
#   tested each year: petrol at any mass, diesel up to and including 14,000 lb, on a
#   dynamometer with an opacity meter. No test, no registration. The opacity limit of
#   the light diesel test was not read, and classic plates are exempt only below a
#   yearly mileage; elsewhere in the state nothing is tested, which is not to say that
#   anything goes.
# related_resources:
# - ref: https://dmv.nv.gov/emission.htm
#   description: emission control program of the Nevada Department of Motor Vehicles
# - ref: https://regulations.justia.com/states/nevada/chapter-445b/emissions-from-engines/control-of-emissions-generally/section-445b-589
#   description: NAC 445B.589, test of diesels
# - ref: https://casetext.com/statute/nevada-revised-statutes/title-40-public-health-and-safety/chapter-445b-air-pollution/control-of-emissions-from-engines/section-445b760-authority-of-commission-to-prescribe-standards-for-emissions-from-mobile-internal-combustion-engines-trimobiles-standards-pertaining-to-motor-vehicles-to-be-approved-by-department-of-motor-vehicles
#   description: NRS 445B.760
# custom:
#   level: note
#   hold: inspection
#   basis: agency-guidance
#   source: >-
#     page of the Nevada Department of Motor Vehicles on its emission control program;
#     NAC 445B.589 for the diesel test; NRS 445B.760(1)(b) for the plates; NAC 445B.576,
#     which holds the limit, was not read. That both the fuel on record and the fuel
#     burnt bring a vehicle into scope, gaseous fuels too, is a reading on the safe side
#   outcomes:
#   - met
#   - unproven
#   - not applicable
#   remedy: >-
#     book a test while injection and timing can still be set, and take the certificate
#     to the registration
#   question:
#     ask: >-
#       Is the vehicle based in the tested area, or exempt by its plates and mileage;
#       which test and which limit apply to it with its new engine, and has it passed?
#     office: Nevada Department of Motor Vehicles, emission control
#   reviewed: 2026-11-25
#   since: 0.1.0
#   waivable: true
package regions["us-nv"].emission_test

import data.lib.judge

_sparked := {"petrol", "lpg", "cng"}

# A vehicle is called to the test as what its record says and tested as what it is.
applies := judge.all_of([
	judge.when_zone({"Clark", "Washoe"}),
	judge.when_min("build.chassis.model_year", "limits.us_nv.first_tested_year"),
	judge.any_of([
		judge.when("build.engine.fuel", _sparked),
		judge.when("build.registration.title_fuel", _sparked),
		judge.all_of([
			judge.any_of([
				judge.when("build.engine.fuel", {"diesel"}),
				judge.when("build.registration.title_fuel", {"diesel"}),
			]),
			judge.when_max("build.chassis.ratings.gross", "limits.us_nv.diesel_gross"),
		]),
	]),
])
