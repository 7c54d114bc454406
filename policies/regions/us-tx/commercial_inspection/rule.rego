# METADATA
# title: the commercial vehicle has its inspection
# description: >-
#   Since 1 January 2025 private vehicles are registered without a safety inspection.
#   Commercial vehicles are still inspected, and what the station looks for on a changed
#   engine, its exhaust and fuel lines was not read.
# related_resources:
# - ref: https://www.dps.texas.gov/section/vehicle-inspection/news-and-updates
#   description: Texas Department of Public Safety on the end of safety inspections and on Bexar county
# custom:
#   level: note
#   hold: inspection
#   basis: agency-guidance
#   source: >-
#     page of the Texas Department of Public Safety: the change is for non-commercial
#     vehicles
#   outcomes:
#   - met
#   - unproven
#   - not applicable
#   remedy: ask the station before the cab floor and the exhaust are closed up
#   question:
#     ask: >-
#       Which inspection does this commercial vehicle need with its new engine, and has
#       it passed?
#     office: Texas Department of Public Safety, vehicle inspection
#   reviewed: 2026-11-25
#   since: 0.1.0
#   waivable: true
package regions["us-tx"].commercial_inspection

import data.lib.judge

applies := judge.when("build.registration.use", {"commercial"})
