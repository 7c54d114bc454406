# METADATA
# title: British questions have the authority's answer
# description: >-
#   Any alteration that makes the registration document wrong is notified by the keeper,
#   and the offices say what the altered vehicle then is and how it is tested. Every
#   question that this build raises has its answer on paper before money is spent.
# related_resources:
# - ref: http://www.legislation.gov.uk/uksi/2002/2742/part/IV
#   description: Registration and Licensing Regulations 2002, reg. 16, read on 2026-11-25
# custom:
#   level: must
#   hold: plan
#   basis: regulation
#   source: Road Vehicles (Registration and Licensing) Regulations 2002, reg. 16(1)
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
package regions.gb.questions_answered

import data.lib.judge

# Each question says itself when it is raised.
applies := judge.always
