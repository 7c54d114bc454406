# METADATA
# title: the exhaust as drawn stays within the limit
# description: >-
#   Computed stretch by stretch, with bends, steps and muffler, the back pressure at rated
#   power is within what the engine's maker allows. Found out now it is a pencil line; found
#   out on the road test it is the whole exhaust again.
# custom:
#   level: should
#   hold: mockup
#   basis: manufacturer
#   source: >-
#     highest back pressure from the engine maker's data sheet, against Darcy and Weisbach
#     with bends as lengths of straight pipe
#   outcomes:
#   - met
#   - not met
#   - unproven
#   - not applicable
#   remedy: >-
#     step up to the next tube behind the brake or the flexible joint, use bends of a wide
#     radius, or choose a freer muffler
#   reviewed: 2026-11-25
#   since: 0.1.0
#   waivable: true
package rules.exhaust.pipe_drop

import data.lib.judge

applies := judge.all_of([
	judge.when("build.engine.fuel", {"diesel"}),
	judge.when_there("build.exhaust.back_pressure_limit"),
	judge.when_listed("build.exhaust.segments"),
])

findings contains judge.about(
	"exhaust.segments",
	judge.limit_max("figures.exhaust.pipe_drop", "build.exhaust.back_pressure_limit"),
)
