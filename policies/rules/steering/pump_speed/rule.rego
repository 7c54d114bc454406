# METADATA
# title: the steering pump stays below its highest speed
# description: >-
#   At governed engine speed the pump turns no faster than its maker allows. Beyond it
#   the pump foams its oil and seizes, and the assist goes without warning.
# custom:
#   level: should
#   hold: install
#   basis: manufacturer
#   source: highest continuous speed from the pump's maker; pulley ratio without slip
#   outcomes:
#   - met
#   - not met
#   - unproven
#   - not applicable
#   remedy: fit a larger pump pulley, and look at the flow at idle again
#   caution: >-
#     try the steering from lock to lock with the wheels on the ground before the
#     vehicle moves; a vehicle that will not steer is not driven
#   reviewed: 2026-11-25
#   since: 0.1.0
#   waivable: false
package rules.steering.pump_speed

import data.lib.judge

applies := judge.when_there("build.hydraulics.steering.speed_limit")

findings contains judge.about(
	"hydraulics.steering.speed_limit",
	judge.limit_max("figures.hydraulics.pump_speed_use", "limits.steering.pump_speed_use"),
)
