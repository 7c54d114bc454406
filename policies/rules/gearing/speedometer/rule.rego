# METADATA
# title: the speedometer is right on these tyres
# description: >-
#   Tyres of another diameter leave the speedometer within 3 per cent of true. Larger ones
#   make the vehicle faster than it shows, and the fine is the driver's.
# custom:
#   level: should
#   hold: road-test
#   basis: common-practice
#   source: >-
#     common practice: 3 per cent either way; what the local authority allows is stricter
#     where the speed shown is below the true one
#   outcomes:
#   - met
#   - not met
#   - unproven
#   remedy: >-
#     change the speedometer's gear or have its signal corrected, and check it against a
#     measured distance
#   reviewed: 2026-11-25
#   since: 0.1.0
#   waivable: true
package rules.gearing.speedometer

import data.lib.judge

findings contains judge.about("chassis.tyres.rear_diameter", judge.within(
	"figures.gearing.speedometer_error",
	"limits.gearing.speedometer_slow",
	"limits.gearing.speedometer_fast",
))
