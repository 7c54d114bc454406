# METADATA
# title: New South Wales' questions have an answer
# description: >-
#   A vehicle with a modification of the listed kind must not be used on a road, and its
#   owner must not permit it, unless a compliance certificate was issued for the
#   modification and was not cancelled. Who asks after the work may be told that it can not
#   be certified; every question that this build raises has its answer on paper.
# related_resources:
# - ref: https://zoelaw.ai/legislation/road-transport-vehicle-registration-regulation-2017/sections/84
#   description: >-
#     Road Transport (Vehicle Registration) Regulation 2017, clause 84, copy of the version
#     of April 2026
# custom:
#   level: must
#   hold: plan
#   basis: regulation
#   source: >-
#     Road Transport (Vehicle Registration) Regulation 2017, clause 84(1) and (2), read on
#     2026-11-25 in a copy of the version of April 2026
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
package regions["au-nsw"].questions_answered

import data.lib.judge

# Each question says itself when it is raised.
applies := judge.always
