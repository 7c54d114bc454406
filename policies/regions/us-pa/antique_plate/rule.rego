# METADATA
# title: the plates allow the changed engine
# description: >-
#   Antique plates are said to ask for 25 years and substantial conformity with the
#   maker's specification; an engine of another make may end it, and with it the
#   exemption from inspection.
# custom:
#   level: note
#   hold: plan
#   basis: second-hand
#   source: >-
#     reference notes on the Department's title definitions, from a copied document
#   outcomes:
#   - met
#   - unproven
#   - not applicable
#   remedy: ask before the original engine is sold, or plan for ordinary plates
#   question:
#     ask: >-
#       May this vehicle keep or get its class of plates with this engine, and which
#       inspections follow from it?
#     office: Pennsylvania Department of Transportation, bureau of motor vehicles
#   reviewed: 2026-11-25
#   since: 0.1.0
#   waivable: true
package regions["us-pa"].antique_plate

import data.lib.judge

applies := judge.all_of([
	judge.when("build.registration.plate_class", {"historic", "custom"}),
	judge.when_differs("build.outgoing_engine.family", "build.engine.family"),
])
