# METADATA
# title: suction of the fuel line is within the pump when cold
# description: >-
#   The same with the thick fuel of the coldest day. What runs in autumn stops at the
#   first frost, on the road, because thick fuel takes three times the suction.
# custom:
#   level: should
#   hold: install
#   basis: manufacturer
#   source: >-
#     suction allowed by the lift pump's maker; friction of a smooth line without bends
#   outcomes:
#   - met
#   - not met
#   - unproven
#   - not applicable
#   remedy: fit a larger line or a heated separator, and use winter fuel
#   caution: >-
#     drain fuel cold, outdoors, away from sparks, with an extinguisher at hand; never
#     weld or cut a tank that has held fuel. Local fire codes apply
#   reviewed: 2026-11-25
#   since: 0.1.0
#   waivable: false
package rules.fuel.suction_cold

import data.lib.judge

applies := judge.all_of([
	judge.when("build.engine.fuel", {"diesel"}),
	judge.when_there("build.fuel.suction_limit"),
])

findings contains judge.about(
	"fuel.suction_limit",
	judge.limit_max("figures.fuel.suction_cold_use", "limits.fuel.suction_use"),
)
