# METADATA
# title: Quebec's questions have the SAAQ's answer
# description: >-
#   No altered vehicle whose stability, braking or compliance may have suffered is put
#   into operation before it was inspected, and the SAAQ alone inspects. Every question
#   that this build raises by a hold point has its answer on paper there.
# related_resources:
# - ref: https://www.legisquebec.gouv.qc.ca/en/version/cs/C-24.2?code=se:214&history=20220516
#   description: Highway Safety Code, section 214, version of May 2022, read on 2026-11-25
# custom:
#   level: must
#   hold: plan
#   basis: statute
#   source: Highway Safety Code, section 214, version of May 2022
#   outcomes:
#   - met
#   - unproven
#   - not applicable
#   remedy: ask the SAAQ and put its answer with the evidence, kind authority-answer
#   collects: questions
#   reviewed: 2026-11-25
#   since: 0.1.0
#   waivable: false
package regions["ca-qc"].questions_answered

import data.lib.judge

# Each question says itself when it is raised.
applies := judge.always
