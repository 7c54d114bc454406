# METADATA
# title: plate, declaration or authority card can be shown
# description: >-
#   The inspector accepts a valid low volume vehicle plate, a valid modification declaration
#   or authority card, or an accepted overseas certification. Without one the vehicle gets
#   no warrant.
# related_resources:
# - ref: https://vehicleinspection.nzta.govt.nz/virms/in-service-wof-and-cof/general/miscellaneous-items/engine-and-transmission
#   description: inspection manual, engine and transmission
# custom:
#   level: note
#   hold: inspection
#   basis: agency-guidance
#   source: inspection manual 13-1, reason for rejection 9(b), read on 2026-11-25
#   outcomes:
#   - met
#   - unproven
#   - not applicable
#   remedy: have the plate fitted before the inspection is booked
#   question:
#     ask: >-
#       Which proof of certification does the vehicle carry for this engine, or why is none
#       needed?
#     office: low volume vehicle certifier
#   reviewed: 2026-11-25
#   since: 0.1.0
#   waivable: true
package regions.nz.certification_shown

import data.lib.judge

applies := judge.when_differs("build.outgoing_engine.family", "build.engine.family")
