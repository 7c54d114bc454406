# METADATA
# title: the lift pump delivers what the engine draws
# description: >-
#   At full load the lift pump brings what is burnt and what runs back to the tank. A
#   pump made for another engine keeps up at idle and starves the injection on the first
#   hill; the injectors are changed for nothing.
# custom:
#   level: should
#   hold: install
#   basis: physics
#   source: what is burnt and what runs back both pass the lift pump
#   outcomes:
#   - met
#   - not met
#   - unproven
#   - not applicable
#   remedy: >-
#     fit the lift pump of the new engine, or an electric one of its delivery that the
#     engine's maker allows
#   caution: >-
#     drain fuel cold, outdoors, away from sparks, with an extinguisher at hand; never
#     weld or cut a tank that has held fuel. Local fire codes apply
#   reviewed: 2026-11-25
#   since: 0.1.0
#   waivable: false
package rules.fuel.lift_pump_flow

import data.lib.judge

# None: a rotary pump may draw from the tank by itself.
applies := judge.all_of([
	judge.when("build.engine.fuel", {"diesel"}),
	judge.when_there("build.fuel.lift_pump_flow"),
])

findings contains judge.about(
	"fuel.lift_pump_flow",
	judge.limit_max("figures.fuel.lift_pump_use", "limits.fuel.lift_pump_use"),
)
