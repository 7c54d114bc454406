# METADATA
# title: certificate and modification plate are issued
# description: >-
#   The approved person inspects the finished vehicle, issues the certificate and attaches
#   the modification plate with the codes. A swap without the plate is found at the next
#   inspection or roadside check.
# related_resources:
# - ref: https://pdfslide.us/documents/business-rules-for-approved-persons-vehicle-modifications.html
#   description: business rules for approved persons, version 4.0 of 2015, copy
# custom:
#   level: note
#   hold: inspection
#   basis: agency-guidance
#   source: >-
#     business rules for approved persons, version 4.0 of 1 September 2015, headings 3.3.2
#     and 3.3.3; reference notes on them
#   outcomes:
#   - met
#   - unproven
#   - not applicable
#   remedy: have every code of the swap on the plate, gearbox and brakes included
#   question:
#     ask: Is the certificate of modification issued, and which codes does the plate bear?
#     office: Queensland approved person, Department of Transport and Main Roads
#   reviewed: 2026-11-25
#   since: 0.1.0
#   waivable: true
package regions["au-qld"].modification_plate

import data.lib.judge

applies := judge.when_differs("build.outgoing_engine.family", "build.engine.family")
