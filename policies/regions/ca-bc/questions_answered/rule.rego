# METADATA
# title: British Columbia's questions have their answer
# description: >-
#   Smoke of a heavy diesel is limited by the year of its engine, and the province decides
#   what an altered vehicle has to bear. Every question that this build raises by a hold
#   point has its answer on paper there.
# related_resources:
# - ref: https://www.bclaws.gov.bc.ca/civix/document/id/complete/statreg/108_99
#   description: B.C. Reg. 108/99, consolidation of October 2021, read on 2026-11-25
# - ref: http://www.drivesmartbc.ca/miscellaneous/qa-pollution
#   description: paragraph 16 as quoted, read on 2026-11-25
# custom:
#   level: must
#   hold: plan
#   basis: regulation
#   source: >-
#     B.C. Reg. 108/99 sections 1 and 2, on heavy diesels, is the strongest text read; for
#     light vehicles B.C. Reg. 26/58, schedule to Division 7, paragraph 16, only as a
#     road-safety page quotes it
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
package regions["ca-bc"].questions_answered

import data.lib.judge

# Each question says itself when it is raised.
applies := judge.always
