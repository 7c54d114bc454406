# METADATA
# title: the restored-modified note suits the engine
# description: >-
#   A vehicle restored with modern parts can have its registration noted as
#   restored-modified after an emission inspection, and a county may not turn it away
#   for that note alone. Whether the inspection then takes the year of the chassis or of
#   the engine was not seen.
# related_resources:
# - ref: https://le.utah.gov/~2023/bills/sbillenr/SB0264.htm
#   description: Senate Bill 264 of 2023, enrolled
# - ref: https://mved.utah.gov/register/inspections
#   description: Utah Division of Motor Vehicles on inspections, 2025
# custom:
#   level: note
#   hold: plan
#   basis: statute
#   source: >-
#     Senate Bill 264 of 2023, enrolled; page of the Utah Division of Motor Vehicles of
#     2025
#   outcomes:
#   - met
#   - unproven
#   - not applicable
#   remedy: ask which year counts before the donor is bought
#   question:
#     ask: >-
#       Can this vehicle bear the restored-modified note with this engine, and is it
#       inspected by the year of chassis or engine?
#     office: Utah Division of Motor Vehicles
#   reviewed: 2026-11-25
#   since: 0.1.0
#   waivable: true
package regions["us-ut"].restored_modified

import data.lib.judge

applies := judge.when("build.registration.plate_class", {"custom"})
