# METADATA
# title: the cooling stands the hottest day, as tested
# description: >-
#   At full load with the thermostat open the coolant settled low enough that on the hottest
#   day it still stays within what the engine's maker allows. A test on a cool morning proves
#   nothing of August; a head cracks where nobody looked at the gauge.
# custom:
#   level: must
#   hold: road-test
#   basis: manufacturer
#   source: >-
#     highest coolant temperature from the engine maker's data sheet; limiting ambient
#     temperature as SAE J1393 defines it, seen second-hand
#   needs_basis:
#     road-test: measured
#   outcomes:
#   - met
#   - not met
#   - unproven
#   - not applicable
#   remedy: >-
#     seal gaps round the core, close the shroud, fit a larger radiator or fan, and repeat
#     the pull at full load until the gauge stands still
#   caution: >-
#     test with a second person, one who drives and one who reads; stop before the coolant
#     boils; let the engine cool and lose its pressure before cap or hose is opened; coolant
#     scalds
#   reviewed: 2026-11-25
#   since: 0.1.0
#   waivable: true
package rules.cooling.hottest_day

import data.lib.judge

applies := judge.when_there("build.cooling")

findings contains judge.about(
	"cooling.top_tank",
	judge.limit_min("figures.cooling.limiting_ambient", "build.registration.ambient"),
)
