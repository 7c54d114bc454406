# METADATA
# title: ride heights and spring travel were measured as found
# description: >-
#   The height at each corner and the clearance to the bump stops were measured on the
#   complete vehicle. Once the engine is out the springs rise, and nobody can say any more
#   whether new springs brought it back.
# custom:
#   level: should
#   hold: strip
#   basis: own-record
#   source: >-
#     what the hold point strip is for: values that dismantling destroys
#   needs_basis:
#     strip: measured
#   outcomes:
#   - met
#   - unproven
#   remedy: >-
#     measure from wheel centre to wing edge at each corner, and from axle to bump stop, on
#     level ground with the springs settled, on the day of the corner weights
#   reviewed: 2026-11-25
#   since: 0.1.0
#   waivable: true
package rules.baseline.ride_heights

import data.lib.judge

_taken := {
	"build.baseline.ride_heights.front_left",
	"build.baseline.ride_heights.front_right",
	"build.baseline.ride_heights.rear_left",
	"build.baseline.ride_heights.rear_right",
	"build.chassis.springs.front_bump",
	"build.chassis.springs.rear_bump",
}

findings contains judge.present_at(path, "strip") if some path in _taken
