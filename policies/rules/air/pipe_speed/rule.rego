# METADATA
# title: air pipes are wide enough
# description: >-
#   At rated power the air runs no faster than 35 m/s in the clean-air pipe and 60 m/s in the
#   hot charge pipe. A pipe chosen to slip past the steering shaft costs boost, response and
#   fuel every hour that it runs.
# custom:
#   level: should
#   hold: mockup
#   basis: common-practice
#   source: >-
#     common practice: 30 to 35 m/s before the engine, 45 to 60 m/s behind the compressor
#   outcomes:
#   - met
#   - not met
#   - unproven
#   - not applicable
#   remedy: >-
#     choose the next size of tube, or an oval of the same area where a round one does not
#     pass
#   reviewed: 2026-11-25
#   since: 0.1.0
#   waivable: true
package rules.air.pipe_speed

import data.lib.judge

applies := judge.when("build.engine.fuel", {"diesel", "petrol", "lpg", "cng"})

findings contains judge.about(
	"intake.duct_bore",
	judge.limit_max("figures.air.duct_speed", "limits.air.duct_speed"),
)

findings contains judge.about(
	"charge_air.pipe_bore",
	judge.limit_max("figures.air.charge_pipe_speed", "limits.air.charge_pipe_speed"),
) if {
	not judge.is_none("build.charge_air")
	_charged.state == "yes"
}

_charged := judge.unless("build.engine.induction", {"natural"})
