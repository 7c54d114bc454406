# METADATA
# title: the fuel gauge shows empty as empty, full as full
# description: >-
#   Sender and gauge of the tank speak the same resistances. A tank of another model, or
#   one turned round, shows a quarter with nothing in it, and a diesel that ran dry is
#   bled at the roadside.
# custom:
#   level: should
#   hold: first-start
#   basis: common-practice
#   source: >-
#     common practice: at most 5 % of the scale with the tank empty, 90 to 110 % with it
#     full
#   outcomes:
#   - met
#   - not met
#   - unproven
#   - not applicable
#   remedy: fit the sender that belongs to the gauge, or a converter between the two
#   caution: >-
#     drain fuel cold, outdoors, away from sparks, with an extinguisher at hand; never
#     weld or cut a tank that has held fuel. Local fire codes apply
#   reviewed: 2026-11-25
#   since: 0.1.0
#   waivable: false
package rules.fuel.gauge_reads_true

import data.lib.judge

applies := judge.when_there("build.fuel.gauge")

findings contains judge.about(
	"fuel.sender.empty",
	judge.limit_max("figures.fuel.gauge_reading_empty", "limits.fuel.gauge_empty"),
)

findings contains judge.about(
	"fuel.sender.full",
	judge.within(
		"figures.fuel.gauge_reading_full",
		"limits.fuel.gauge_full_low",
		"limits.fuel.gauge_full_high",
	),
)
