# METADATA
# title: the replacement engine passes the visual inspection
# description: >-
#   A replaced engine brings every control its maker needed for the engine and chassis,
#   fitted and working, and the result equals a verified configuration of the chassis'
#   year or newer; the vehicle is inspected by the year of the chassis. The clause
#   stands under vehicles that are not diesels. What is looked for when a petrol chassis
#   becomes a diesel is not said, while a diesel without its crankcase control or
#   catalyst is sent back to fit them.
# related_resources:
# - ref: https://casetext.com/regulation/arizona-administrative-code/title-18-environmental-quality/chapter-2-department-of-environmental-quality-air-pollution-control/article-10-motor-vehicles-inspections-and-maintenance/section-r18-2-1006-emissions-test-procedures
#   description: A.A.C. R18-2-1006, test procedures, current in October 2024
# - ref: https://casetext.com/regulation/arizona-administrative-code/title-18-environmental-quality/chapter-2-department-of-environmental-quality-air-pollution-control/article-10-motor-vehicles-inspections-and-maintenance/section-r18-2-1009-tampering-repair-requirements
#   description: A.A.C. R18-2-1009, tampering repair
# custom:
#   level: note
#   hold: plan
#   basis: regulation
#   source: >-
#     R18-2-1006(B)(1)(b)(iii) and (iv); R18-2-1009 on tampering repair; for diesels
#     only the latter was found
#   outcomes:
#   - met
#   - unproven
#   - not applicable
#   remedy: >-
#     list the controls of the donor configuration, with the labels of both engines, and
#     show it to a state station
#   question:
#     ask: >-
#       Which verified configuration does this engine and chassis equal, and which
#       controls will the inspection look for, above all where a diesel replaces a
#       petrol engine?
#     office: Arizona Department of Environmental Quality, vehicle emissions control
#   reviewed: 2026-11-25
#   since: 0.1.0
#   waivable: true
package regions["us-az"].engine_change

import data.lib.judge

applies := judge.all_of([
	judge.when_zone({"Maricopa", "Pima", "Pinal", "Yavapai"}),
	judge.when_min("build.chassis.model_year", "limits.us_az.first_tested_year"),
	judge.when_differs("build.outgoing_engine.family", "build.engine.family"),
])
