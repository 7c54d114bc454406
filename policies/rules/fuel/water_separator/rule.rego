# METADATA
# title: a water separator guards the injection pump
# description: >-
#   A separator with a drain takes water out of the fuel before the injection pump. Diesel
#   carries water, and a pump that the fuel lubricates seizes on a spoonful.
# custom:
#   level: should
#   hold: install
#   basis: common-practice
#   source: >-
#     common practice: a separator with a drain ahead of the lift pump; makers of
#     common-rail engines have it in the filter behind
#   outcomes:
#   - met
#   - not met
#   - unproven
#   - not applicable
#   remedy: >-
#     fit a water separator where its drain can be reached
#   caution: >-
#     drain fuel cold, outdoors, away from sparks, with an extinguisher at hand; never weld
#     or cut a tank that has held fuel. Local fire codes apply
#   reviewed: 2026-11-25
#   since: 0.1.0
#   waivable: false
package rules.fuel.water_separator

import data.lib.judge

applies := judge.when("build.engine.fuel", {"diesel"})

findings contains judge.one_of("build.fuel.water_separator", {true})
