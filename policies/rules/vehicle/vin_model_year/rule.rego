# METADATA
# title: the model year agrees with the VIN
# description: >-
#   The model year given is the one that the tenth character of the VIN stands for. Which
#   emission and lighting rules apply hangs on it, and the title's year is sometimes that of
#   first sale.
# related_resources:
# - ref: https://law.lawstack.com/cfr/49/565.15/
#   description: 49 CFR 565.15
# - ref: https://wiki.niidae.com/index.php?action=edit&section=9&title=Vehicle_identification_number
#   description: table of model year codes
# custom:
#   level: should
#   hold: plan
#   basis: regulation
#   source: >-
#     49 CFR 565.15(b) on the seventh place, read as an excerpt on 2026-11-25; table of the
#     tenth as printed on the page named
#   outcomes:
#   - met
#   - not met
#   - unproven
#   - not applicable
#   remedy: >-
#     compare title, certification label and VIN, and use the year of the label
#   reviewed: 2026-11-25
#   since: 0.1.0
#   waivable: true
package rules.vehicle.vin_model_year

import data.lib.judge

applies := judge.all_of([
	judge.in_region({"US", "CA"}),
	judge.when("build.chassis.category", {"passenger-car", "light-truck", "off-road-wagon"}),
	judge.when_min("build.chassis.model_year", "limits.vehicle.first_vin_year"),
	judge.when_there("build.chassis.vin"),
	judge.when_there("build.chassis.vin.model_year"),
])

findings contains judge.about(
	"chassis.model_year",
	judge.equals("build.chassis.model_year", "build.chassis.vin.model_year"),
)
