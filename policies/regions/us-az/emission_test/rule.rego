# METADATA
# title: the emission inspection that is due has been passed
# description: >-
#   Vehicles of 1967 and later are inspected where the owner lives in area A around
#   Phoenix or area B around Tucson, or commutes to work there from outside. The areas
#   are drawn by township through four counties, so the county alone does not settle it.
#   Diesels are tested each year with a look for tampering. Insured collectibles can be
#   exempt, and one law that would free years up to 1974 waits for federal approval.
# related_resources:
# - ref: https://www.law.cornell.edu/regulations/arizona/Ariz-Admin-Code-SS-R18-2-1003
#   description: A.A.C. R18-2-1003, vehicles to be inspected
# - ref: https://law.uslawyerdatabase.com/49-541-definitions
#   description: A.R.S. 49-541, areas A and B by township
# custom:
#   level: note
#   hold: inspection
#   basis: regulation
#   source: >-
#     R18-2-1003(A) and (B); A.R.S. 49-541; the exemption of collectibles and the
#     waiting law are second-hand
#   outcomes:
#   - met
#   - unproven
#   - not applicable
#   remedy: >-
#     look the address up, and have the vehicle tested before the registration falls due
#   question:
#     ask: >-
#       Is the owner's residence, or the way to work, inside area A or area B, and has
#       the vehicle with its new engine passed the inspection due there?
#     office: Arizona Department of Environmental Quality, vehicle emissions control
#   reviewed: 2026-11-25
#   since: 0.1.0
#   waivable: true
package regions["us-az"].emission_test

import data.lib.judge

applies := judge.all_of([
	judge.when_zone({"Maricopa", "Pima", "Pinal", "Yavapai"}),
	judge.when_min("build.chassis.model_year", "limits.us_az.first_tested_year"),
	judge.when("build.engine.fuel", {"diesel", "petrol", "lpg", "cng"}),
])
