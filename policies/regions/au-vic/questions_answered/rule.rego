# METADATA
# title: Victoria's questions have the authority's answer
# description: >-
#   A registered vehicle goes on complying with the standards of its date of manufacture,
#   and only the simpler modifications that the state lists go without an approval
#   certificate. An engine fitted first and shown later may never get one; every question
#   that this build raises has its answer on paper.
# related_resources:
# - ref: https://www.scribd.com/document/718909935/PTVH5189-STU-02895-Vehicle-Standards-Information-8-v10-WEB-FA-1
#   description: Vehicle Standards Information 8, October 2021, copy
# custom:
#   level: must
#   hold: plan
#   basis: agency-guidance
#   source: >-
#     Vehicle Standards Information 8 of October 2021 for vehicles to 4.5 t, first page read
#     in a copy
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
package regions["au-vic"].questions_answered

import data.lib.judge

# Each question says itself when it is raised.
applies := judge.always
