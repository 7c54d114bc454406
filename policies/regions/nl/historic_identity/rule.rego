# METADATA
# title: a restored vehicle keeps its identity
# description: >-
#   A historic vehicle whose main components are replaced can keep its identity and number
#   only where enough of them are its own or of its kind; drive train and frame are main
#   components. Else it gets a new number and the date of today.
# related_resources:
# - ref: https://amklassiek.nl/de-rdw-dus/2015/05/27
#   description: RDW as a magazine quotes it, read on 2026-11-25
# custom:
#   level: note
#   hold: plan
#   basis: second-hand
#   source: >-
#     RDW as a magazine quotes it; the count of components was cut off in what was read
#   outcomes:
#   - met
#   - unproven
#   - not applicable
#   remedy: ask with photographs of frame and drive train before taking them apart
#   question:
#     ask: >-
#       Does the vehicle keep its identity and first admission with this engine and the
#       other components replaced?
#     office: RDW, the vehicle authority
#   reviewed: 2026-11-25
#   since: 0.1.0
#   waivable: true
package regions.nl.historic_identity

import data.lib.judge

applies := judge.all_of([
	judge.when("build.registration.plate_class", {"historic", "reconstructed", "assembled"}),
	judge.when_differs("build.outgoing_engine.family", "build.engine.family"),
])
