# METADATA
# title: the heater clears the windscreen
# description: >-
#   With the engine warm the heater clears the windscreen. An economical diesel gives its
#   water less heat than the petrol engine did, and hoses swapped at the dash panel or
#   capped for the first start leave the driver behind a fogged pane.
# custom:
#   level: should
#   hold: road-test
#   basis: common-practice
#   source: >-
#     common practice: try it on a cold morning; where the safety standard of the United
#     States asks it of a shop, its own rule is judged instead
#   outcomes:
#   - met
#   - not met
#   - unproven
#   - not applicable
#   remedy: >-
#     bleed the heater, see that flow and return are not swapped, and fit the thermostat
#     the engine wants
#   caution: >-
#     open a hot cooling system only when it has cooled: scalding coolant leaves it at once
#   reviewed: 2026-11-27
#   since: 0.1.0
#   waivable: true
package rules.hvac.heater_works

import data.lib.judge

applies := judge.all_of([
	judge.when_there("build.hvac"),
	judge.any_of([
		judge.negate(judge.in_region({"US"})),
		judge.unless("build.registration.installer", {"shop"}),
	]),
])

findings contains judge.one_of("build.hvac.heater_works", {true})
