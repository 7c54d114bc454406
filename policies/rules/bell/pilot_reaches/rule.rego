# METADATA
# title: the input shaft reaches its pilot, not the crankshaft
# description: >-
#   The nose of the input shaft runs in the pilot bearing and its tip keeps off the bottom
#   of the bore. Too short, the shaft whips and takes the gearbox; too long, bolting up the
#   bell pushes the crankshaft through its thrust bearing.
# custom:
#   level: must
#   hold: mockup
#   basis: physics
#   source: >-
#     stack-up of lengths from the rear face of the block, measured
#   outcomes:
#   - met
#   - not met
#   - unproven
#   - not applicable
#   remedy: >-
#     correct the thickness of the adapter, or use a pilot bearing that stands where the
#     nose is
#   caution: >-
#     never draw a bell home with its bolts: what does not go together by hand is being
#     pushed
#   reviewed: 2026-11-25
#   since: 0.1.0
#   waivable: true
package rules.bell.pilot_reaches

import data.lib.judge

applies := judge.all_of([
	judge.negate(judge.when("build.transmission.bell.as_made", {true})),
	judge.when("build.transmission.type", {"manual"}),
])

findings contains judge.about("transmission.bell.input_reach", judge.worst([
	judge.limit_min("figures.bell.pilot_share", "limits.bell.pilot_least"),
	judge.limit_min("figures.bell.pilot_clearance", "limits.bell.tip_least"),
]))
