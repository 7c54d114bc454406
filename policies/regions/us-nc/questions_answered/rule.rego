# METADATA
# title: North Carolina's questions have the authority's answer
# description: >-
#   A vehicle subject to registration is subject to the safety inspection, and an
#   emission control missing from it fails. How an engine change stands there is for the
#   state to say; every question that this build raises has its answer on paper.
# related_resources:
# - ref: https://regulations.justia.com/states/north-carolina/title-19a/chapter-03/subchapter-d/section-0500/section-03d-0526
#   description: 19A NCAC 03D .0526, tampering part of the safety inspection
# - ref: https://casetext.com/statute/general-statutes-of-north-carolina/chapter-20-motor-vehicles/article-3a-safety-and-emissions-inspection-program/part-2-safety-and-emissions-inspections-of-certain-vehicles/section-20-1832-description-of-vehicles-subject-to-safety-or-emissions-inspection-definitions
#   description: G.S. 20-183.2
# custom:
#   level: must
#   hold: plan
#   basis: regulation
#   source: 19A NCAC 03D .0526; G.S. 20-183.2(a)
#   outcomes:
#   - met
#   - unproven
#   - not applicable
#   remedy: >-
#     ask the office named with each question and put its answer with the evidence, kind
#     authority-answer
#   collects: questions
#   reviewed: 2026-11-25
#   since: 0.1.0
#   waivable: false
package regions["us-nc"].questions_answered

import data.lib.judge

# Each question says itself when it is raised.
applies := judge.always
