# METADATA
# title: the parking brake holds the laden vehicle
# description: >-
#   The parking brake holds the gross rating on the slope that the law asks for. A brake
#   on the shaft went with the old gearbox, or holds through another axle ratio than
#   before, and the vehicle rolls off the ramp.
# custom:
#   level: should
#   hold: road-test
#   basis: physics
#   source: >-
#     weight along the slope against the torque measured; the grade is that of the law
#     which applies
#   outcomes:
#   - met
#   - not met
#   - unproven
#   - not applicable
#   remedy: adjust or renew the brake, or fit one that acts on the wheels
#   caution: >-
#     chock the wheels and keep everybody off the slope below; brakes are worked on and
#     proved by who is trained for it, where local law asks for it; nobody drives on an
#     unproved brake beyond walking pace on closed ground
#   reviewed: 2026-11-25
#   since: 0.1.0
#   waivable: false
package rules.brakes.parking_holds

import data.lib.judge

applies := judge.when_there("build.hydraulics.parking_brake")

findings contains judge.about(
	"hydraulics.parking_brake.torque",
	judge.limit_max("figures.hydraulics.parking_use", "limits.brakes.parking_use"),
)
