# METADATA
# title: the hub of the disc sits on the spline
# description: >-
#   Four fifths of the hub of the clutch disc sit on the spline of the input shaft. A hub
#   that hangs over the end tilts, drags, and strips the splines it has.
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
#     use a disc whose hub stands further back or forward, or correct the adapter
#   reviewed: 2026-11-25
#   since: 0.1.0
#   waivable: true
package rules.bell.spline

import data.lib.judge

applies := judge.all_of([
	judge.negate(judge.when("build.transmission.bell.as_made", {true})),
	judge.when("build.transmission.type", {"manual"}),
])

findings contains judge.about(
	"transmission.bell.hub_offset",
	judge.limit_min("figures.bell.spline_share", "limits.bell.spline"),
)
