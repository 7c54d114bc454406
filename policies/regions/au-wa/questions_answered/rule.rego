# METADATA
# title: Western Australia's questions have an answer
# description: >-
#   A car or a derivative of one must not be altered in what the regulation lists without
#   the approval of the chief executive officer. Approval comes before the work; every
#   question that this build raises has its answer on paper.
# related_resources:
# - ref: http://classic.austlii.edu.au/au/legis/wa/consol_reg/rtr2014295/s235.html
#   description: Road Traffic (Vehicles) Regulations 2014, regulation 235
# custom:
#   level: must
#   hold: plan
#   basis: regulation
#   source: Road Traffic (Vehicles) Regulations 2014, regulation 235(2), read on 2026-11-25
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
package regions["au-wa"].questions_answered

import data.lib.judge

# Each question says itself when it is raised.
applies := judge.always
