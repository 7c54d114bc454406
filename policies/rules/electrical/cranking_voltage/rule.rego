# METADATA
# title: the battery holds its voltage while cranking
# description: >-
#   While the starter turns the cold engine the battery stays above the voltage at which
#   solenoids and relays drop out. What holds in the workshop in June may not start in
#   January.
# custom:
#   level: should
#   hold: first-start
#   basis: common-practice
#   source: >-
#     common practice: 9.6 V at the battery of a 12 V system while cranking
#   needs_basis:
#     first-start: measured
#   outcomes:
#   - met
#   - not met
#   - unproven
#   - not applicable
#   remedy: charge and test the battery, then clean the joints and look at the cranking loop
#   caution: crank with the stop device in reach and nobody near belts and fan
#   reviewed: 2026-11-25
#   since: 0.1.0
#   waivable: true
package rules.electrical.cranking_voltage

import data.lib.judge

applies := judge.negate(judge.when_min("build.electrical.system_voltage", "limits.electrical.above_twelve_volt"))

findings contains judge.about("electrical.battery", judge.limit_min(
	judge.newest("cranking_voltage", "cold"),
	"limits.electrical.cranking_voltage",
))
