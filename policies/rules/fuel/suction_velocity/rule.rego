# METADATA
# title: fuel runs slowly in the suction line
# description: >-
#   Fuel moves at no more than 1 m/s towards the lift pump. A faster line pulls air
#   through every joint that is not quite tight, and the engine hunts and dies on
#   corners.
# custom:
#   level: should
#   hold: install
#   basis: common-practice
#   source: >-
#     common practice: 0.6 to 1.0 m/s on the suction side
#   outcomes:
#   - met
#   - not met
#   - unproven
#   - not applicable
#   remedy: fit the next larger line between tank and lift pump
#   caution: >-
#     drain fuel cold, outdoors, away from sparks, with an extinguisher at hand; never
#     weld or cut a tank that has held fuel. Local fire codes apply
#   reviewed: 2026-11-25
#   since: 0.1.0
#   waivable: false
package rules.fuel.suction_velocity

import data.lib.judge

applies := judge.all_of([
	judge.when("build.engine.fuel", {"diesel"}),
	judge.when_there("build.fuel.suction_limit"),
])

findings contains judge.about(
	"fuel.supply_bore",
	judge.limit_max("figures.fuel.supply_velocity", "limits.fuel.suction_velocity"),
)
