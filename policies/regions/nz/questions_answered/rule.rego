# METADATA
# title: New Zealand's questions have the authority's answer
# description: >-
#   A vehicle whose engine or transmission is modified is rejected at inspection unless the
#   modification is below a threshold or its certification is shown. The certifier may want
#   to see the work before it is covered; every question that this build raises has its
#   answer on paper.
# related_resources:
# - ref: https://vehicleinspection.nzta.govt.nz/virms/in-service-wof-and-cof/general/miscellaneous-items/engine-and-transmission
#   description: inspection manual, engine and transmission
# custom:
#   level: must
#   hold: plan
#   basis: agency-guidance
#   source: >-
#     in-service inspection manual of the NZ Transport Agency, 13-1, reason for rejection 9,
#     read on 2026-11-25
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
package regions.nz.questions_answered

import data.lib.judge

# Each question says itself when it is raised.
applies := judge.always
