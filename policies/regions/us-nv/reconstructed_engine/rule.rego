# METADATA
# title: the year of a reconstructed vehicle's engine is shown
# description: >-
#   Exhaust standards for a reconstructed vehicle are those of the year in which its
#   engine was built, so that the date on the engine decides, not the chassis. Without
#   proof of it nobody can say which standard the vehicle is held to.
# related_resources:
# - ref: https://casetext.com/statute/nevada-revised-statutes/title-40-public-health-and-safety/chapter-445b-air-pollution/control-of-emissions-from-engines/section-445b760-authority-of-commission-to-prescribe-standards-for-emissions-from-mobile-internal-combustion-engines-trimobiles-standards-pertaining-to-motor-vehicles-to-be-approved-by-department-of-motor-vehicles
#   description: NRS 445B.760
# custom:
#   level: should
#   hold: plan
#   basis: statute
#   source: NRS 445B.760(2); the definition in NRS 482.100 was not read
#   outcomes:
#   - met
#   - not met
#   - unproven
#   - not applicable
#   remedy: >-
#     photograph the plate or the number of the engine, or have its maker date it in
#     writing
#   reviewed: 2026-11-25
#   since: 0.1.0
#   waivable: true
package regions["us-nv"].reconstructed_engine

import data.lib.judge

applies := judge.when("build.registration.plate_class", {"reconstructed"})

findings contains judge.supported("build.engine.built")
