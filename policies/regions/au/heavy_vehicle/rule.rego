# METADATA
# title: a vehicle above 4.5 t has its own code
# description: >-
#   The code for light vehicles ends at a gross rating of 4.5 t. Above it other codes and
#   other people certify, and an engineer for light vehicles can not sign.
# related_resources:
# - ref: https://www.scribd.com/document/718909935/PTVH5189-STU-02895-Vehicle-Standards-Information-8-v10-WEB-FA-1
#   description: Vehicle Standards Information 8, October 2021, copy
# - ref: https://vdocuments.site/light-vehicle-modification-sagovau-a-report-from-a-light-vehicle-engineering.html
#   description: fact sheet of South Australia, copy
# custom:
#   level: note
#   hold: plan
#   basis: agency-guidance
#   source: >-
#     Vehicle Standards Information 8 of Victoria, October 2021, which sends heavier
#     vehicles to the National Heavy Vehicle Regulator; fact sheet of South Australia on
#     light vehicle modification
#   outcomes:
#   - met
#   - unproven
#   - not applicable
#   remedy: ask the heavy vehicle regulator for the code and for a certifier who holds it
#   question:
#     ask: Which code applies to an engine change in this vehicle, and who certifies it?
#     office: National Heavy Vehicle Regulator, or the registration authority of the state
#   reviewed: 2026-11-25
#   since: 0.1.0
#   waivable: true
package regions.au.heavy_vehicle

import data.lib.judge

applies := judge.negate(judge.when_max("build.chassis.ratings.gross", "limits.au.light_gross"))
