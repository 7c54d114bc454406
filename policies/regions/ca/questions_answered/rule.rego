# METADATA
# title: federal questions have the authority's answer
# description: >-
#   Federal law sets what vehicles and engines have to be when they are made or imported,
#   and leaves alterations in use to the provinces. Every federal question that this build
#   raises by a hold point has its answer on paper there.
# related_resources:
# - ref: https://laws-lois.justice.gc.ca/eng/regulations/SOR-2003-2/
#   description: On-Road Vehicle and Engine Emission Regulations, consolidation of June 2019, read in a copy on 2026-11-25
# custom:
#   level: must
#   hold: plan
#   basis: regulation
#   source: >-
#     SOR/2003-2 sections 3 and 6, consolidation of June 2019; the Act behind it was not
#     read
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
package regions.ca.questions_answered

import data.lib.judge

# Each question says itself when it is raised.
applies := judge.always
