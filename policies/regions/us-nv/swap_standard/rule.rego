# METADATA
# title: the standard for the changed engine is known
# description: >-
#   The inspection looks, from model year 1981 on, for every control that the maker's
#   emission label names, and a diesel in a petrol chassis has none of those. Which
#   label and which model year count after an engine change is said for reconstructed
#   vehicles only: theirs is the year the engine was built.
# related_resources:
# - ref: https://regulations.justia.com/states/nevada/chapter-445b/emissions-from-engines/control-of-emissions-generally/section-445b-589
#   description: NAC 445B.589, test of diesels
# - ref: https://casetext.com/statute/nevada-revised-statutes/title-40-public-health-and-safety/chapter-445b-air-pollution/control-of-emissions-from-engines/section-445b760-authority-of-commission-to-prescribe-standards-for-emissions-from-mobile-internal-combustion-engines-trimobiles-standards-pertaining-to-motor-vehicles-to-be-approved-by-department-of-motor-vehicles
#   description: NRS 445B.760
# custom:
#   level: note
#   hold: plan
#   basis: regulation
#   source: >-
#     NAC 445B.589, inspection for tampering, read in a copy; NRS 445B.760(2) for
#     reconstructed vehicles; a clause on an engine change under an ordinary title was
#     not found
#   outcomes:
#   - met
#   - unproven
#   - not applicable
#   remedy: >-
#     ask with the labels of both engines at hand, before the petrol engine and its
#     label are gone
#   question:
#     ask: >-
#       Which emission label, which model year and which parts does the inspection look
#       for after this engine change, under the title the vehicle will have?
#     office: Nevada Department of Motor Vehicles, emission control
#   reviewed: 2026-11-25
#   since: 0.1.0
#   waivable: true
package regions["us-nv"].swap_standard

import data.lib.judge

applies := judge.all_of([
	judge.when_zone({"Clark", "Washoe"}),
	judge.when_min("build.chassis.model_year", "limits.us_nv.first_tested_year"),
	judge.any_of([
		judge.when_differs("build.outgoing_engine.family", "build.engine.family"),
		judge.when_differs("build.registration.title_fuel", "build.engine.fuel"),
	]),
])
