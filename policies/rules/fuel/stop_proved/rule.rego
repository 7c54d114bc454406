# METADATA
# title: the stop was proved before the first start
# description: >-
#   Before a diesel is started the first time its stop was tried by hand, or through the key
#   with the pump in view, and moved all the way. A diesel whose stop does not work cannot
#   be switched off.
# custom:
#   level: must
#   hold: first-start
#   basis: own-record
#   source: >-
#     what the hold point first-start is for: nothing is started that cannot be stopped
#   outcomes:
#   - met
#   - not met
#   - unproven
#   - not applicable
#   reasons:
#     future: the day lies ahead, so nothing has been proved yet
#   remedy: >-
#     try the stop, watch its lever reach the stop position, and write the day down
#   caution: >-
#     a diesel that runs away is stopped by shutting off its air: have a board at hand for
#     the first start, and stand clear
#   reviewed: 2026-11-25
#   since: 0.1.0
#   waivable: false
package rules.fuel.stop_proved

import data.lib.judge

applies := judge.when("build.engine.fuel", {"diesel"})

findings contains judge.dated_at("build.fuel.stop.proved", "first-start")
