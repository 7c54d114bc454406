# METADATA
# title: the permit for the whole swap is granted first
# description: >-
#   Besides the engine, gearbox, axle, brakes and track may need approval: the same table
#   lists lighter brakes and a track widened by more than 25 mm. A permit of the department
#   is said to be asked before work on light vehicles of every kind.
# related_resources:
# - ref: http://classic.austlii.edu.au/au/legis/wa/consol_reg/rtr2014295/s235.html
#   description: Road Traffic (Vehicles) Regulations 2014, regulation 235
# custom:
#   level: note
#   hold: plan
#   basis: second-hand
#   source: >-
#     reference notes on the modification permit of the department; the table of regulation
#     235 was read for cars
#   outcomes:
#   - met
#   - unproven
#   - not applicable
#   remedy: apply with the list of all changes and the engineer's report
#   question:
#     ask: >-
#       Is a modification permit needed for this vehicle, for which of its changes, and is
#       it granted?
#     office: Western Australia, vehicle licensing (chief executive officer)
#   reviewed: 2026-11-25
#   since: 0.1.0
#   waivable: true
package regions["au-wa"].modification_permit

import data.lib.judge

applies := judge.when_differs("build.outgoing_engine.family", "build.engine.family")
