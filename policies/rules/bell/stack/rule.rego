# METADATA
# title: the flywheel stands where the bell wants it
# description: >-
#   The face of the flywheel lies within 1.5 mm of where clutch, release bearing and starter
#   of the bell want it. An adapter without its flywheel spacer leaves the fork at the end
#   of its travel and the pinion short of the ring gear.
# custom:
#   level: should
#   hold: mockup
#   basis: common-practice
#   source: >-
#     common practice; stack-up of lengths from the rear face of the block, measured
#   outcomes:
#   - met
#   - not met
#   - unproven
#   - not applicable
#   remedy: >-
#     correct the thickness of the adapter or of the flywheel spacer, never with washers
#   reviewed: 2026-11-25
#   since: 0.1.0
#   waivable: true
package rules.bell.stack

import data.lib.judge

# An automatic has no clutch whose place could be wrong.
applies := judge.all_of([
	judge.negate(judge.when("build.transmission.bell.as_made", {true})),
	judge.unless("build.transmission.type", {"automatic"}),
])

findings contains judge.about("transmission.bell.flywheel_needed", judge.within(
	"figures.bell.stack_error",
	"limits.bell.stack_ahead",
	"limits.bell.stack_behind",
))
