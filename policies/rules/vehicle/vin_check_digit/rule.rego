# METADATA
# title: the check digit of the VIN is right
# description: >-
#   The ninth character of the VIN is the one that the others lead to. A wrong one is nearly
#   always a character misread or mistyped, and papers with it come back from every office.
#   A vehicle made for another market may have a filling character there: then this is no
#   fault.
# related_resources:
# - ref: http://edocket.access.gpo.gov/cfr_2002/octqtr/49cfr565.4.htm
#   description: 49 CFR 565.4 as of 2002, seventeen characters, a check digit in the ninth place
# - ref: http://www.automobilesoftware.com/wiki/index.php?n=VinData.9thCheckDigit?action=source
#   description: how the check digit is computed
# custom:
#   level: should
#   hold: plan
#   basis: regulation
#   source: >-
#     49 CFR 565.4(b) and (c), revision of 2002, read as an excerpt on 2026-11-25;
#     computation as printed on the page named
#   outcomes:
#   - met
#   - not met
#   - unproven
#   - not applicable
#   reasons:
#     misread: the ninth character is not the one that the others lead to
#   remedy: >-
#     read the number off the plate and the frame again, character by character: I, O and Q
#     do not occur
#   reviewed: 2026-11-25
#   since: 0.1.0
#   waivable: true
package rules.vehicle.vin_check_digit

import data.lib.judge

applies := judge.all_of([
	judge.in_region({"US", "CA"}),
	judge.when_min("build.chassis.model_year", "limits.vehicle.first_vin_year"),
	judge.when_there("build.chassis.vin"),
	judge.when_there("build.chassis.vin.check_digit"),
])

findings contains judge.about(
	"chassis.vin",
	judge.because("misread", judge.one_of("build.chassis.vin.check_digit", {true})),
)
