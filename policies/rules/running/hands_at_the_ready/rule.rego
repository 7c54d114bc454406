# METADATA
# title: extinguisher and air shut-off stand ready
# description: >-
#   At the first start an extinguisher stands beside the vehicle, and beside a diesel
#   somebody who can shut its air. Set up wrongly a diesel runs away on its own oil, and
#   then neither the key nor the fuel stops it.
# custom:
#   level: must
#   hold: first-start
#   basis: own-record
#   source: >-
#     what the hold point first-start is for: fire and overspeed have somebody waiting
#     for them
#   outcomes:
#   - met
#   - not met
#   - unproven
#   remedy: >-
#     put an extinguisher for burning liquids beside the vehicle, and a board at the
#     intake with somebody who knows when to use it
#   caution: >-
#     keep hands off a running intake: a board, not a palm; chock the wheels, keep
#     everybody out of the line of belts, fan and wheels, and run the engine where its
#     exhaust leaves the building
#   reviewed: 2026-11-25
#   since: 0.1.0
#   waivable: false
package rules.running.hands_at_the_ready

import data.lib.judge

findings contains judge.one_of("build.first_start.extinguisher", {true})

findings contains judge.one_of("build.first_start.air_shut_off", {true}) if {
	judge.when("build.engine.fuel", {"diesel"}).state != "no"
}
