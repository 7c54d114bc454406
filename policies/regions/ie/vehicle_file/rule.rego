# METADATA
# title: the vehicle file names the new engine and fuel
# description: >-
#   Motor tax of older vehicles goes by displacement, and the test is booked by the fuel
#   on file. Which form and which proof change them was not found.
# custom:
#   level: note
#   hold: handover
#   basis: memory
#   source: from memory that the motor tax office changes the entry
#   outcomes:
#   - met
#   - unproven
#   - not applicable
#   remedy: >-
#     bring the registration certificate, the receipt of the engine and a letter of the
#     garage
#   question:
#     ask: >-
#       Which form and proof change engine and fuel in the vehicle file, and is it done?
#     office: motor tax office of the county
#   reviewed: 2026-11-25
#   since: 0.1.0
#   waivable: true
package regions.ie.vehicle_file

import data.lib.judge

applies := judge.any_of([
	judge.when_differs("build.outgoing_engine.family", "build.engine.family"),
	judge.when_differs("build.registration.title_fuel", "build.engine.fuel"),
])
