# METADATA
# title: the safety inspection accepts the emission controls
# description: >-
#   The yearly safety inspection in every county grades emission controls: missing,
#   disconnected or simulated fails, never fitted does not apply. A petrol chassis that
#   lost its catalyst to a diesel was made with one, and how the inspector grades it is
#   not said. Vehicles of 35 years and more are said to be out of it, and commercial
#   vehicles can be under the federal inspection instead.
# related_resources:
# - ref: https://regulations.justia.com/states/north-carolina/title-19a/chapter-03/subchapter-d/section-0500/section-03d-0526
#   description: 19A NCAC 03D .0526, tampering part of the safety inspection
# - ref: https://casetext.com/statute/general-statutes-of-north-carolina/chapter-20-motor-vehicles/article-3a-safety-and-emissions-inspection-program/part-2-safety-and-emissions-inspections-of-certain-vehicles/section-20-1832-description-of-vehicles-subject-to-safety-or-emissions-inspection-definitions
#   description: G.S. 20-183.2
# custom:
#   level: note
#   hold: plan
#   basis: regulation
#   source: >-
#     19A NCAC 03D .0526 and G.S. 20-183.2(a) and (a1); the age of 35 years is
#     second-hand and not used here
#   outcomes:
#   - met
#   - unproven
#   - not applicable
#   remedy: >-
#     ask a station with the list of controls of chassis and donor before the catalyst
#     is sold
#   question:
#     ask: >-
#       How is a control graded that the chassis was made with and the new engine has no
#       use for, and what else has to be shown?
#     office: North Carolina Division of Motor Vehicles, license and theft bureau
#   reviewed: 2026-11-25
#   since: 0.1.0
#   waivable: true
package regions["us-nc"].tamper_grading

import data.lib.judge

applies := judge.all_of([
	judge.when_listed("build.chassis.emission_equipment"),
	judge.when_differs("build.outgoing_engine.family", "build.engine.family"),
	judge.negate(judge.when("build.registration.plate_class", {"historic"})),
])
