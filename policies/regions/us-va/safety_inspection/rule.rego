# METADATA
# title: the safety inspection has been passed
# description: >-
#   A safety inspection is remembered as yearly and statewide. What it asks of exhaust,
#   fuel lines, shift pattern and lamps on a vehicle with another engine was not read.
# custom:
#   level: note
#   hold: inspection
#   basis: memory
#   source: the yearly safety inspection, from memory; 19VAC30-70 was not read
#   outcomes:
#   - met
#   - unproven
#   - not applicable
#   remedy: >-
#     show the finished vehicle to an inspection station before the last covers go on
#   question:
#     ask: >-
#       Has the vehicle with its new engine passed the safety inspection, and did the
#       station ask for anything about the engine change?
#     office: Virginia Department of State Police, safety division
#   reviewed: 2026-11-25
#   since: 0.1.0
#   waivable: true
package regions["us-va"].safety_inspection

import data.lib.judge

applies := judge.when_differs("build.outgoing_engine.family", "build.engine.family")
