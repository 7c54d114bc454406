# METADATA
# title: the vehicle was weighed before it was taken apart
# description: >-
#   All four corner weights were measured on the complete vehicle, with the fuel level
#   noted. Once the old engine is out they can never be had again, and every axle load after
#   that is a guess.
# custom:
#   level: must
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
#     weigh each corner now, complete and on level ground, and note the fuel level and the
#     date
#   reviewed: 2026-11-25
#   since: 0.1.0
#   waivable: true
package rules.mass.baseline_weighed

import data.lib.judge

_taken := [
	"build.baseline.corner_weights.front_left",
	"build.baseline.corner_weights.front_right",
	"build.baseline.corner_weights.rear_left",
	"build.baseline.corner_weights.rear_right",
	"build.baseline.fuel_level",
	"build.baseline.weighed",
]

findings contains judge.present_at(path, "strip") if some path in _taken
