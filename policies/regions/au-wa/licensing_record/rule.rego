# METADATA
# title: weighbridge record and engine number are taken in
# description: >-
#   The licensing part of the regulations has provisions on a weighbridge record and on
#   engine and vehicle identification numbers, whose text was not read. A heavier engine
#   changes the first, and every swap the second.
# related_resources:
# - ref: https://www.scribd.com/document/641086812/Untitled
#   description: Road Traffic (Vehicles) Regulations 2014, contents as at July 2020, copy
# custom:
#   level: note
#   hold: inspection
#   basis: second-hand
#   source: >-
#     headings of regulations 26 and 27 of the Road Traffic (Vehicles) Regulations 2014,
#     read in the table of contents only
#   outcomes:
#   - met
#   - unproven
#   - not applicable
#   remedy: >-
#     weigh the finished vehicle axle by axle and take the ticket and the engine number
#     along
#   question:
#     ask: >-
#       Are a weighbridge record and the new engine number wanted for the licence, and are
#       they recorded?
#     office: Western Australia, vehicle licensing (chief executive officer)
#   reviewed: 2026-11-25
#   since: 0.1.0
#   waivable: true
package regions["au-wa"].licensing_record

import data.lib.judge

applies := judge.when_differs("build.outgoing_engine.family", "build.engine.family")
