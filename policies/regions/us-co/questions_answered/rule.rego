# METADATA
# title: Colorado's questions have the authority's answer
# description: >-
#   Taking off, disabling or altering emission controls is forbidden on vehicles of
#   every fuel and mass, tested or not. Whether an engine change keeps them is for the
#   state to say; every question that this build raises has its answer on paper.
# related_resources:
# - ref: https://cdphe.colorado.gov/motor-vehicle-emissions/tampering-of-emissions-control-systems-is-prohibited
#   description: Colorado Department of Public Health and Environment on tampering
# custom:
#   level: must
#   hold: plan
#   basis: agency-guidance
#   source: >-
#     page of the Colorado Department of Public Health and Environment on tampering,
#     with C.R.S. 42-4-314, which was not read itself
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
package regions["us-co"].questions_answered

import data.lib.judge

# Each question says itself when it is raised.
applies := judge.always
