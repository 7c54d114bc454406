# METADATA
# title: the police have cleared the new engine number
# description: >-
#   Every engine change brings another engine number. The registering office gives out the
#   request, the clearance unit of the police sees the vehicle, and only then is it
#   registered again. Microdots are compulsory for a vehicle presented since 1 September
#   2012. There is no fee unless a number has to be embossed.
# related_resources:
# - ref: https://www.westerncape.gov.za/tpw/vehicle-clearance-engine-and-chassis-changes
#   description: Western Cape government on clearance
# custom:
#   level: note
#   hold: inspection
#   basis: agency-guidance
#   source: >-
#     page of the Western Cape government on clearance for engine and chassis changes, read
#     on 2026-11-25; procedure of that province
#   outcomes:
#   - met
#   - unproven
#   - not applicable
#   remedy: >-
#     have microdots fitted, take request, receipt of the engine and vehicle to the
#     clearance unit, and touch no number
#   question:
#     ask: Are engine and chassis number cleared, and what is the number of the clearance?
#     office: South African Police Service, vehicle clearance unit
#   reviewed: 2026-11-25
#   since: 0.1.0
#   waivable: true
package regions.za.police_clearance

import data.lib.judge

# A new engine is another number, in the same family too.
applies := judge.when_there("build.engine.number")
