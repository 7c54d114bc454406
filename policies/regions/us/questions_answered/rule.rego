# METADATA
# title: federal questions have the authority's answer
# description: >-
#   A certified vehicle may not lose a device or element of its emission design; whether a
#   swap keeps it is for the authority to say. Every federal question that this build
#   raises has its answer on paper before money is spent.
# related_resources:
# - ref: http://www.off-road.com/trucks-4x4/tech/engine-switching-fact-sheet-20126.html
#   description: copy of the EPA engine switching fact sheet, part A read on 2026-11-25
# custom:
#   level: must
#   hold: plan
#   basis: agency-guidance
#   source: >-
#     EPA engine switching fact sheet, part A, on section 203(a)(3) of the Clean Air Act,
#     42 U.S.C. 7522(a)(3); read in a copy
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
package regions.us.questions_answered

import data.lib.judge

# Each question says itself when it is raised.
applies := judge.always
