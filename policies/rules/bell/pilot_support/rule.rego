# METADATA
# title: the pilot bearing carries the input shaft well
# description: >-
#   Three quarters of the pilot bearing carry the nose of the input shaft, and its tip keeps
#   2 mm off the bottom of the bore. A nose that hangs in the last few millimetres wears the
#   bearing and lets the clutch drag.
# custom:
#   level: should
#   hold: mockup
#   basis: common-practice
#   source: >-
#     common practice
#   outcomes:
#   - met
#   - not met
#   - unproven
#   - not applicable
#   remedy: >-
#     correct the thickness of the adapter, or have a pilot bearing or sleeve made to the
#     place of the nose
#   reviewed: 2026-11-25
#   since: 0.1.0
#   waivable: true
package rules.bell.pilot_support

import data.lib.judge

applies := judge.all_of([
	judge.negate(judge.when("build.transmission.bell.as_made", {true})),
	judge.when("build.transmission.type", {"manual"}),
])

findings contains judge.about("transmission.bell.input_reach", judge.worst([
	judge.limit_min("figures.bell.pilot_share", "limits.bell.pilot_support"),
	judge.limit_min("figures.bell.pilot_clearance", "limits.bell.tip_gap"),
]))
