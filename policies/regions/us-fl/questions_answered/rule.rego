# METADATA
# title: Florida's questions have the authority's answer
# description: >-
#   A vehicle whose emission controls were dismantled or made ineffective may not be
#   offered, sold or transferred, unless what replaced them is equivalent. Whether an
#   engine change is that is for the state to say; every question that this build raises
#   has its answer on paper.
# related_resources:
# - ref: https://lawserver.com/law/state/florida/regulations/florida_statutes_316-2935
#   description: Florida Statutes 316.2935, current as of 2024
# custom:
#   level: must
#   hold: plan
#   basis: statute
#   source: Florida Statutes 316.2935(1)(a), current as of 2024
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
package regions["us-fl"].questions_answered

import data.lib.judge

# Each question says itself when it is raised.
applies := judge.always
