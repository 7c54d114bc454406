# METADATA
# title: suction of the fuel line is within the lift pump
# description: >-
#   Friction and lift of the suction line, warm and with the tank empty, are within the
#   suction that the lift pump allows. A long thin line of the old engine lets vapour
#   form on a hot climb, and the engine surges as if its pump were worn.
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
#   remedy: fit a larger line, shorten it, or move the lift pump towards the tank
#   caution: >-
#     drain fuel cold, outdoors, away from sparks, with an extinguisher at hand; never
#     weld or cut a tank that has held fuel. Local fire codes apply
#   reviewed: 2026-11-25
#   since: 0.1.0
#   waivable: false
package rules.fuel.suction_warm

import data.lib.judge

applies := judge.all_of([
	judge.when("build.engine.fuel", {"diesel"}),
	judge.when_there("build.fuel.suction_limit"),
])

findings contains judge.about(
	"fuel.suction_limit",
	judge.limit_max("figures.fuel.suction_warm_use", "limits.fuel.suction_use"),
)
