# METADATA
# title: the cooling circuit was filled and bled
# description: >-
#   The circuit was filled slowly with heater and bleeders open, run until the thermostat
#   opened, cooled and topped up. Air that stays in the head stops the flow there: the gauge
#   hangs in steam, reads cold, and the head cracks.
# custom:
#   level: must
#   hold: road-test
#   basis: own-record
#   source: >-
#     the record of this build; common practice after any opening of the circuit
#   outcomes:
#   - met
#   - not met
#   - unproven
#   - not applicable
#   remedy: >-
#     open the heater and every bleeder, raise the filler above the engine, run to full
#     temperature, let it cool, top up, and repeat until the level stays
#   caution: >-
#     let the engine cool and lose its pressure before cap or hose is opened; coolant scalds
#   reviewed: 2026-11-25
#   since: 0.1.0
#   waivable: true
package rules.cooling.bled

import data.lib.judge

applies := judge.when_there("build.cooling")

findings contains judge.one_of("build.cooling.bled", {true})
