# METADATA
# title: Arizona's questions have the authority's answer
# description: >-
#   Every control needed for the certification of engine and chassis is installed and in
#   operating condition, and a missing one is put back before the vehicle passes.
#   Whether an engine change has them is for the state to say; every question that this
#   build raises has its answer on paper.
# related_resources:
# - ref: https://casetext.com/regulation/arizona-administrative-code/title-18-environmental-quality/chapter-2-department-of-environmental-quality-air-pollution-control/article-10-motor-vehicles-inspections-and-maintenance/section-r18-2-1006-emissions-test-procedures
#   description: A.A.C. R18-2-1006, test procedures, current in October 2024
# - ref: https://casetext.com/regulation/arizona-administrative-code/title-18-environmental-quality/chapter-2-department-of-environmental-quality-air-pollution-control/article-10-motor-vehicles-inspections-and-maintenance/section-r18-2-1009-tampering-repair-requirements
#   description: A.A.C. R18-2-1009, tampering repair
# custom:
#   level: must
#   hold: plan
#   basis: regulation
#   source: R18-2-1006(B)(1)(b)(iii) and R18-2-1009, read in copies
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
package regions["us-az"].questions_answered

import data.lib.judge

# Each question says itself when it is raised.
applies := judge.always
