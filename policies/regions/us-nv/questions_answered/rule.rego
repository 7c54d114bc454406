# METADATA
# title: Nevada's questions have the authority's answer
# description: >-
#   Registration is refused until there is evidence that the vehicle complies. What an
#   engine change has to keep is for the state to say; every question that this build
#   raises has its answer on paper.
# related_resources:
# - ref: https://courtgpt.ai/laws/nevada/chapter-445b/statute-445b-815
#   description: NRS 445B.815
# - ref: https://regulations.justia.com/states/nevada/chapter-445b/emissions-from-engines/control-of-emissions-generally/section-445b-589
#   description: NAC 445B.589, test of diesels
# custom:
#   level: must
#   hold: plan
#   basis: statute
#   source: NRS 445B.815, read in a copy; NAC 445B.589 on the inspection for tampering
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
package regions["us-nv"].questions_answered

import data.lib.judge

# Each question says itself when it is raised.
applies := judge.always
