# METADATA
# title: the inspection accepts the changed engine
# description: >-
#   In counties without an emission test the yearly safety inspection is said to include
#   a look at the emission controls, and to reject a vehicle whose catalyst,
#   recirculation or evaporative parts, as its make and year had them, are gone or wrong
#   for the certified configuration. A petrol truck with a diesel has lost them all.
#   What chapter 177 says of switched engines was not visible.
# custom:
#   level: note
#   hold: plan
#   basis: second-hand
#   source: >-
#     reference notes on the visual check, from an owners' page; 67 Pa. Code 177.203 and
#     177.291 to 177.292 were not read
#   outcomes:
#   - met
#   - unproven
#   - not applicable
#   remedy: >-
#     take the controls list of both engines to an inspection station before the old
#     parts are thrown away
#   question:
#     ask: >-
#       Which emission controls does the inspection look for after this engine change,
#       in a county with and without the emission test?
#     office: Pennsylvania Department of Transportation, vehicle inspection
#   reviewed: 2026-11-25
#   since: 0.1.0
#   waivable: true
package regions["us-pa"].engine_change

import data.lib.judge

applies := judge.when_differs("build.outgoing_engine.family", "build.engine.family")
