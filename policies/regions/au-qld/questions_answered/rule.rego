# METADATA
# title: Queensland's questions have the answer of the state
# description: >-
#   Engine, gearbox, rear axle, steering and brake changes are complex modifications that an
#   approved person has to approve. A light vehicle with a modification that does not comply
#   counts as defective and may not be driven or parked on a road; every question that this
#   build raises has its answer on paper.
# related_resources:
# - ref: https://documents.pub/document/pdf-modification-motor-vehicles2.html
#   description: Queensland Transport, booklet on modifications, 2008, copy
# - ref: https://pdfslide.us/documents/business-rules-for-approved-persons-vehicle-modifications.html
#   description: business rules for approved persons, version 4.0 of 2015, copy
# custom:
#   level: must
#   hold: plan
#   basis: agency-guidance
#   source: >-
#     booklet of Queensland Transport of 2008 on modifications of vehicles to 4.5 t, read in
#     a copy; that a vehicle whose modification is not compliant is defective is in section
#     8 and before it of the Vehicle Standards and Safety Regulation 2021, read in an
#     unofficial copy
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
package regions["au-qld"].questions_answered

import data.lib.judge

# Each question says itself when it is raised.
applies := judge.always
