# METADATA
# title: the engine is of no earlier emission stage
# description: >-
#   Exhaust that is worse than before ends the operating permit. An engine certified to an
#   earlier stage than the vehicle is worse on paper before anything was measured, and no
#   expert is known to sign for it.
# related_resources:
# - ref: https://github.com/bundestag/gesetze/blob/master/s/stvzo_2012/index.md
#   description: StVZO, copy of the consolidated text, read on 2026-11-25
# custom:
#   level: should
#   hold: plan
#   basis: regulation
#   source: >-
#     follows from StVZO section 19(2) sentence 2 no. 3; that the stages are compared is
#     not in its wording
#   outcomes:
#   - met
#   - not met
#   - unproven
#   - not applicable
#   remedy: look for a donor of the vehicle's stage or a later one, with its papers
#   reviewed: 2026-11-25
#   since: 0.1.0
#   waivable: true
package regions.de.emission_stage

import data.lib.judge

applies := judge.negate(judge.when("build.engine.fuel", {"electric"}))

findings contains judge.limit_min("build.engine.emission_stage", "build.chassis.emission_stage")
