# METADATA
# title: the referee has seen and labelled the engine change
# description: >-
#   A vehicle with another engine or another fuel is first seen by the state referee, who
#   puts a label on it; ordinary stations then test it to that label. To be outside the
#   periodic check is not to be legal: the law on emission devices covers exempt years too.
# custom:
#   level: note
#   hold: inspection
#   basis: second-hand
#   source: >-
#     reference notes on the Smog Check reference guide of the Bureau of Automotive Repair;
#     for exempt years a letter of Air Resources Board staff, quoted by its recipient
#   outcomes:
#   - met
#   - unproven
#   - not applicable
#   remedy: >-
#     book the referee while the engine can still be changed; take the label and family of
#     the donor along
#   question:
#     ask: Is this engine change approved, and what number does the label bear?
#     office: California Bureau of Automotive Repair, Smog Check referee
#   reviewed: 2026-11-25
#   since: 0.1.0
#   waivable: true
package regions["us-ca"].referee

import data.lib.judge

applies := judge.any_of([
	judge.when_differs("build.outgoing_engine.family", "build.engine.family"),
	judge.when_differs("build.registration.title_fuel", "build.engine.fuel"),
])
