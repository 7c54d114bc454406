# METADATA
# title: an imported vehicle or donor was rightly imported
# description: >-
#   The federal emission regulations reach vehicles imported since 2004, except those
#   whose main assembly was completed fifteen years or more before importation. A vehicle
#   never certified for North America and imported younger than that can be sent back; the
#   province then has nothing to register. Age at importation counts, not age today.
# related_resources:
# - ref: https://laws-lois.justice.gc.ca/eng/regulations/SOR-2003-2/
#   description: On-Road Vehicle and Engine Emission Regulations, consolidation of June 2019, read in a copy on 2026-11-25
# custom:
#   level: note
#   hold: plan
#   basis: regulation
#   source: >-
#     SOR/2003-2 sections 3 and 6(3)(a), consolidation of June 2019; the same age for the
#     safety standards from memory
#   outcomes:
#   - met
#   - unproven
#   - not applicable
#   remedy: have the import form with its date at hand before buying
#   question:
#     ask: When was this vehicle imported, how old was it then, and is it admitted?
#     office: Transport Canada, or the registrar of imported vehicles
#   reviewed: 2026-11-25
#   since: 0.1.0
#   waivable: true
package regions.ca.imported_vehicle

import data.lib.judge

applies := judge.when("build.chassis.certification.certified_for", {"none"})
