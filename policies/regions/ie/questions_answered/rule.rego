# METADATA
# title: Irish questions have the office's answer
# description: >-
#   Whoever converts a vehicle turns to Revenue first and follows what it asks, before tax
#   or test. Every question that this build raises by a hold point has its answer on paper
#   there.
# related_resources:
# - ref: https://meath.ie/node/609
#   description: Meath County Council on conversions, read on 2026-11-25
# - ref: http://www.mayococo.ie/en/Services/MotorTax/RevisedProceduresforConversionofVehicles/
#   description: Mayo County Council on conversions, read on 2026-11-25
# custom:
#   level: must
#   hold: plan
#   basis: agency-guidance
#   source: >-
#     pages of Meath and Mayo county councils on conversions, undated; the tax law itself
#     was not read
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
package regions.ie.questions_answered

import data.lib.judge

# Each question says itself when it is raised.
applies := judge.always
