# METADATA
# title: South Africa's questions have the authority's answer
# description: >-
#   A vehicle whose engine or chassis number has changed can not be registered again before
#   the police have cleared it. An engine without papers may be held, and the vehicle with
#   it; every question that this build raises has its answer on paper.
# related_resources:
# - ref: https://www.westerncape.gov.za/tpw/vehicle-clearance-engine-and-chassis-changes
#   description: Western Cape government on clearance
# custom:
#   level: must
#   hold: plan
#   basis: agency-guidance
#   source: >-
#     page of the Western Cape government on clearance for engine and chassis changes, read
#     on 2026-11-25
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
package regions.za.questions_answered

import data.lib.judge

# Each question says itself when it is raised.
applies := judge.always
