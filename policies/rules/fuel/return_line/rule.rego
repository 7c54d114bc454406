# METADATA
# title: a return line leads back to the tank
# description: >-
#   What the injection pump and the injectors do not use runs back to the tank. A petrol
#   tank with one line has no place for it, and warm fuel fed in a circle starves the pump.
# custom:
#   level: should
#   hold: install
#   basis: common-practice
#   source: >-
#     common practice: diesel injection returns fuel to the tank
#   outcomes:
#   - met
#   - not met
#   - unproven
#   - not applicable
#   remedy: >-
#     lead a return line into the top of the tank, away from the pick-up
#   caution: >-
#     drain fuel cold, outdoors, away from sparks, with an extinguisher at hand; never weld
#     or cut a tank that has held fuel. Local fire codes apply
#   reviewed: 2026-11-25
#   since: 0.1.0
#   waivable: false
package rules.fuel.return_line

import data.lib.judge

applies := judge.when("build.engine.fuel", {"diesel"})

findings contains judge.one_of("build.fuel.return_line", {true})
