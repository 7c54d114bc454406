# METADATA
# title: Utah's questions have the authority's answer
# description: >-
#   In the counties with a program no vehicle is registered without a certificate, a
#   waiver or proof that it is exempt. Whether a changed engine can have one is for the
#   county to say; every question that this build raises has its answer on paper. A
#   county without a program tests nothing, which is not to say that anything goes.
# related_resources:
# - ref: https://lexace.ai/us/statute/utah/41-6a-1642
#   description: Utah Code 41-6a-1642
# custom:
#   level: must
#   hold: plan
#   basis: statute
#   source: Utah Code 41-6a-1642(1)(a), read in a copy
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
package regions["us-ut"].questions_answered

import data.lib.judge

# Each question says itself when it is raised.
applies := judge.always
