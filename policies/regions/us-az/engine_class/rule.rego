# METADATA
# title: engine and chassis are certified in one class
# description: >-
#   Where the inspection applies, a heavy-duty engine may not go into a light-duty
#   chassis, nor a light-duty engine into a heavy-duty one, however new it is. The
#   clause stands under vehicles that are not diesels; for diesels engine_change asks.
# related_resources:
# - ref: https://casetext.com/regulation/arizona-administrative-code/title-18-environmental-quality/chapter-2-department-of-environmental-quality-air-pollution-control/article-10-motor-vehicles-inspections-and-maintenance/section-r18-2-1006-emissions-test-procedures
#   description: A.A.C. R18-2-1006, test procedures, current in October 2024
# custom:
#   level: should
#   hold: plan
#   basis: regulation
#   source: >-
#     R18-2-1006(B)(1)(b)(i) and (ii), for non-diesel vehicles inspected in area A or B;
#     whether the address lies in an area is asked elsewhere, so that this is advice
#   outcomes:
#   - met
#   - not met
#   - unproven
#   - not applicable
#   remedy: look for a donor of the class on the label of the chassis
#   reviewed: 2026-11-25
#   since: 0.1.0
#   waivable: true
package regions["us-az"].engine_class

import data.lib.judge

applies := judge.all_of([
	judge.when_zone({"Maricopa", "Pima", "Pinal", "Yavapai"}),
	judge.when("build.engine.fuel", {"petrol", "lpg", "cng"}),
])

findings contains judge.equals("build.engine.certification.class", "build.chassis.certification.class")
