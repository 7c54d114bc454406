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
#   - not met
#   - unproven
#   reasons:
#     taken-apart: by then the old engine was out, so it was not the complete vehicle
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
]

findings contains judge.present_at(path, "strip") if some path in _taken

findings contains judge.dated_at("build.baseline.weighed", "strip")

findings contains judge.because("taken-apart", judge.not_after(
	"build.baseline.weighed",
	"build.outgoing_engine.date",
	"mockup",
))
