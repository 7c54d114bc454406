# METADATA
# title: oil, coolant and fuel are ready for the first start
# description: >-
#   Before the engine runs the first time oil and coolant are in, a diesel is bled, and
#   oil pressure was seen while the starter turned it with the fuel shut off. Bearings
#   that were dry for the first half minute knock a month later.
# custom:
#   level: must
#   hold: first-start
#   basis: own-record
#   source: >-
#     what the hold point first-start is for: nothing runs dry
#   outcomes:
#   - met
#   - not met
#   - unproven
#   remedy: >-
#     fill oil and coolant, bleed the fuel, turn the engine with its fuel shut off until
#     the gauge moves, and write it down
#   caution: >-
#     chock the wheels, keep everybody out of the line of belts, fan and wheels, and run
#     the engine where its exhaust leaves the building
#   reviewed: 2026-11-25
#   since: 0.1.0
#   waivable: false
package rules.running.ready_to_start

import data.lib.judge

findings contains judge.one_of("build.first_start.oil_filled", {true})

# "none" is said of an engine cooled by air.
findings contains judge.one_of("build.first_start.coolant_filled", {true, "none"})

findings contains judge.one_of("build.first_start.oil_pressure_seen", {true})

findings contains judge.one_of("build.first_start.fuel_bled", {true}) if {
	judge.when("build.engine.fuel", {"diesel"}).state != "no"
}
