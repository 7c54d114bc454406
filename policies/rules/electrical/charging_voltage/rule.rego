# METADATA
# title: the charging voltage suits the battery
# description: >-
#   With the engine at governed speed the voltage at the battery lies where a lead battery
#   of twelve volt is charged but not boiled. A regulator that belongs to another alternator
#   shows here first.
# custom:
#   level: should
#   hold: road-test
#   basis: common-practice
#   source: >-
#     common practice: 13.8 to 14.8 V at the battery of a 12 V system
#   needs_basis:
#     road-test: measured
#   outcomes:
#   - met
#   - not met
#   - unproven
#   - not applicable
#   remedy: >-
#     check the regulator against the alternator, then the feed from alternator to battery
#     for drop
#   caution: >-
#     a battery that is overcharged gives off gas that burns: ventilate, and keep flames
#     away
#   reviewed: 2026-11-25
#   since: 0.1.0
#   waivable: true
package rules.electrical.charging_voltage

import data.lib.judge

applies := judge.all_of([
	judge.when_there("build.electrical.alternator"),
	judge.negate(judge.when_min("build.electrical.system_voltage", "limits.electrical.above_twelve_volt")),
])

findings contains judge.about("electrical.alternator", judge.within(
	judge.newest("charging_voltage", "governed-speed"),
	"limits.electrical.charging_voltage_low",
	"limits.electrical.charging_voltage_high",
))
