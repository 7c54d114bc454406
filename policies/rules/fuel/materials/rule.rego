# METADATA
# title: lines, hoses and sender bear the fuel
# description: >-
#   Lines, hoses, seals and the tank sender are made for the fuel of the new engine. Hose
#   made for another fuel softens inside and comes off at the pump.
# custom:
#   level: should
#   hold: install
#   basis: common-practice
#   source: >-
#     common practice: hose marked for the fuel; no copper or zinc in diesel lines
#   outcomes:
#   - met
#   - not met
#   - unproven
#   - not applicable
#   remedy: >-
#     renew hoses and seals with material marked for the fuel
#   caution: >-
#     drain fuel cold, outdoors, away from sparks, with an extinguisher at hand; never weld
#     or cut a tank that has held fuel. Local fire codes apply
#   reviewed: 2026-11-25
#   since: 0.1.0
#   waivable: false
package rules.fuel.materials

import data.lib.judge

applies := judge.when("build.engine.fuel", {"diesel"})

findings contains judge.one_of("build.fuel.materials", {true})
