# METADATA
# title: Virginia's questions have the authority's answer
# description: >-
#   The emission inspection begins with the control equipment and with smoke, and
#   rejects what it may not test. Whether a changed engine passes is for the state to
#   say; every question that this build raises has its answer on paper.
# related_resources:
# - ref: https://law.lis.virginia.gov/admincodefull/title9/agency5/chapter91/partVI
#   description: 9VAC5-91 part VI, November 2024
# - ref: https://regulations.justia.com/states/virginia/title-9/agency-5/chapter-91/part-vi/section-9vac5-91-420
#   description: 9VAC5-91-420, inspection procedure
# custom:
#   level: must
#   hold: plan
#   basis: regulation
#   source: 9VAC5-91-410 and 9VAC5-91-420 C
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
package regions["us-va"].questions_answered

import data.lib.judge

# Each question says itself when it is raised.
applies := judge.always
