# METADATA
# title: Ontario questions have the authority's answer
# description: >-
#   The emission standards of the regulation are prescribed for every motor vehicle in
#   use, and the original emission control systems must be retained. Every question that
#   this build raises by a hold point has its answer on paper there.
# related_resources:
# - ref: https://www.ontario.ca/laws/regulation/220169
#   description: O. Reg. 169/22, sections 1 and 2 and the opening of 3 read on 2026-11-25
# custom:
#   level: must
#   hold: plan
#   basis: regulation
#   source: >-
#     O. Reg. 169/22 section 2 and the opening words of section 3, consolidation of
#     November 2024
#   outcomes:
#   - met
#   - unproven
#   - not applicable
#   remedy: ask the ministry and put its answer with the evidence, kind authority-answer
#   collects: questions
#   reviewed: 2026-11-25
#   since: 0.1.0
#   waivable: false
package regions["ca-on"].questions_answered

import data.lib.judge

# Each question says itself when it is raised.
applies := judge.always
