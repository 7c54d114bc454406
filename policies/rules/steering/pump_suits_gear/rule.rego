# METADATA
# title: the pump feeds the steering gear at idle
# description: >-
#   At idle the pump gives the flow, and its relief valve the pressure, that the
#   steering gear is made for. The pump of the new engine on a slow idle makes the wheel
#   lock when it is turned fast, in the car park and on the trail.
# custom:
#   level: should
#   hold: install
#   basis: manufacturer
#   source: >-
#     flow and pressure asked for by the maker of the gear; 0.9 of the pump's
#     displacement reaches it
#   outcomes:
#   - met
#   - not met
#   - unproven
#   - not applicable
#   remedy: >-
#     fit a smaller pump pulley, a larger pump, or the flow and relief valves that
#     belong to the gear
#   caution: >-
#     try the steering from lock to lock with the wheels on the ground before the
#     vehicle moves; a vehicle that will not steer is not driven
#   reviewed: 2026-11-25
#   since: 0.1.0
#   waivable: false
package rules.steering.pump_suits_gear

import data.lib.judge

_need := {"flow": "build.hydraulics.steering.flow_need", "pressure": "build.hydraulics.steering.pressure_need"}

applies := judge.any_of([judge.when_there(need) | some need in _need])

findings contains judge.about(
	"hydraulics.steering.flow_need",
	judge.limit_min("figures.hydraulics.steering_flow_margin", "limits.steering.pump_margin"),
) if {
	not judge.is_none(_need.flow)
}

findings contains judge.about(
	"hydraulics.steering.pressure_need",
	judge.limit_min("figures.hydraulics.steering_pressure_margin", "limits.steering.pump_margin"),
) if {
	not judge.is_none(_need.pressure)
}
