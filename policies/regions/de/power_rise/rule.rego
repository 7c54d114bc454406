# METADATA
# title: the proofs for more power are known
# description: >-
#   More power asks for proof that brakes and, far above the original, body and frame bear
#   it. The share from which strength is asked for is told as about 40 % by hearsay only;
#   it is the expert who says.
# related_resources:
# - ref: https://e30-talk.com/profile/27875-begga86/content
#   description: forum, second-hand
# custom:
#   level: note
#   hold: plan
#   basis: second-hand
#   source: >-
#     an owner in a forum, who hedges; the leaflet of the inspection bodies on power was
#     not found
#   outcomes:
#   - met
#   - unproven
#   - not applicable
#   remedy: >-
#     ask with both powers and the brakes that stay; a larger brake of the same line is
#     the usual way
#   question:
#     ask: Which proofs of brakes, body and drive line does this rise of power need?
#     office: officially recognised expert of the technical inspection body
#   reviewed: 2026-11-25
#   since: 0.1.0
#   waivable: true
package regions.de.power_rise

import data.lib.judge

applies := judge.negate(judge.when_max("build.engine.rated_power", "build.outgoing_engine.rated_power"))
