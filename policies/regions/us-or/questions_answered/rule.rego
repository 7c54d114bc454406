# METADATA
# title: Oregon's questions have the authority's answer
# description: >-
#   Emission controls may not be disconnected, plugged or otherwise made inoperative,
#   and a test is not valid where they are. Whether an engine change keeps them is for
#   the state to say; every question that this build raises has its answer on paper.
# related_resources:
# - ref: https://oregon.public.law/rules/oar_340-256-0380
#   description: OAR 340-256-0380, basic test
# custom:
#   level: must
#   hold: plan
#   basis: regulation
#   source: OAR 340-256-0380(3)(a) on ORS 815.305(1), which was not read itself
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
package regions["us-or"].questions_answered

import data.lib.judge

# Each question says itself when it is raised.
applies := judge.always
