# METADATA
# title: the safety inspection still due has been passed
# description: >-
#   Private vehicles are registered without a safety inspection since 2018. Rebuilt
#   salvage needs one for its title, and every commercial vehicle one a year, with the
#   certificate in the vehicle.
# related_resources:
# - ref: https://mved.utah.gov/register/inspections
#   description: Utah Division of Motor Vehicles on inspections, 2025
# custom:
#   level: note
#   hold: inspection
#   basis: agency-guidance
#   source: >-
#     page of the Utah Division of Motor Vehicles on inspections, 2025, and its earlier
#     text on rebuilt salvage
#   outcomes:
#   - met
#   - unproven
#   - not applicable
#   remedy: >-
#     book the inspection with the vehicle finished and clean underneath, and keep the
#     certificate in it
#   question:
#     ask: >-
#       Is a safety inspection due for this vehicle, and has it passed with its new
#       engine?
#     office: Utah Division of Motor Vehicles
#   reviewed: 2026-11-25
#   since: 0.1.0
#   waivable: true
package regions["us-ut"].safety_inspection

import data.lib.judge

applies := judge.any_of([
	judge.when("build.registration.use", {"commercial"}),
	judge.when("build.registration.plate_class", {"reconstructed"}),
])
