# METADATA
# title: German questions have the authority's answer
# description: >-
#   The operating permit lapses with a change that alters the approved type, is likely to
#   endanger others or worsens exhaust or noise, and then the vehicle may not be on the
#   road. Every question that this build raises by a hold point has its answer on paper
#   there.
# related_resources:
# - ref: https://github.com/bundestag/gesetze/blob/master/s/stvzo_2012/index.md
#   description: StVZO, copy of the consolidated text, read on 2026-11-25
# custom:
#   level: must
#   hold: plan
#   basis: regulation
#   source: >-
#     StVZO section 19(2) sentence 2 and 19(5), read in a copy of the consolidated text of
#     about 2013
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
package regions.de.questions_answered

import data.lib.judge

# Each question says itself when it is raised.
applies := judge.always
