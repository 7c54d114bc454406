# METADATA
# title: Washington's questions have the authority's answer
# description: >-
#   No component of an emission control may be removed or made inoperable and no element
#   of design changed, tested or not. Whether an engine change does so is for the state
#   to say; every question that this build raises has its answer on paper.
# related_resources:
# - ref: https://apps.leg.wa.gov/WAC/default.aspx?cite=173-421&full=true
#   description: chapter 173-421 WAC
# custom:
#   level: must
#   hold: plan
#   basis: regulation
#   source: WAC 173-421-100
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
package regions["us-wa"].questions_answered

import data.lib.judge

# Each question says itself when it is raised.
applies := judge.always
