# METADATA
# title: the tank was cleaned when the fuel changed
# description: >-
#   Where the engine burns another fuel than the one before, tank and lines were drained and
#   cleaned. Petrol left in the tank of a diesel takes the lubrication from its pump, and
#   rust from the bottom does the rest.
# custom:
#   level: should
#   hold: first-start
#   basis: own-record
#   source: >-
#     the build's own record of the change of fuel
#   outcomes:
#   - met
#   - not met
#   - unproven
#   - not applicable
#   remedy: >-
#     drain and clean tank and lines, or fit the tank of the diesel model
#   caution: >-
#     drain fuel cold, outdoors, away from sparks, with an extinguisher at hand; never weld
#     or cut a tank that has held fuel. Local fire codes apply
#   reviewed: 2026-11-25
#   since: 0.1.0
#   waivable: false
package rules.fuel.tank_cleaned

import data.lib.judge

applies := judge.when_differs("build.engine.fuel", "build.outgoing_engine.fuel")

findings contains judge.one_of("build.fuel.tank_cleaned", {true})
