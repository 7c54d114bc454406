# METADATA
# title: the engine stops when the stop loses its feed
# description: >-
#   A mechanical diesel runs without current: its stop is one that cuts the fuel when its
#   own feed is lost, so that the key always stops it. One that needs current to stop fails
#   when the wire does; one that is pulled by hand needs none.
# custom:
#   level: should
#   hold: first-start
#   basis: common-practice
#   source: >-
#     common practice: stop solenoid energised to run
#   outcomes:
#   - met
#   - not met
#   - unproven
#   - not applicable
#   remedy: >-
#     fit a solenoid that is energised to run, and keep a cable as a second way to stop
#   caution: >-
#     a diesel that runs away is stopped by shutting off its air: have a board at hand for
#     the first start, and stand clear
#   reviewed: 2026-11-25
#   since: 0.1.0
#   waivable: false
package rules.fuel.stop_fails_safe

import data.lib.judge

# A stop that is pulled by hand has no feed to lose.
applies := judge.all_of([
	judge.when("build.engine.fuel", {"diesel"}),
	judge.unless("build.fuel.stop.kind", {"cable", "lever"}),
])

findings contains judge.one_of("build.fuel.stop.without_power", {"stops-without-power"})
