# METADATA
# title: the starter pinion meets the ring gear
# description: >-
#   At rest the pinion stands 1.5 to 4 mm off the ring gear, thrown out it covers two thirds
#   of its width. Too near it grinds while the engine runs; too far it mills the first few
#   millimetres off the teeth.
# custom:
#   level: should
#   hold: mockup
#   basis: common-practice
#   source: >-
#     common practice; lengths from the mounting face of the starter, measured
#   outcomes:
#   - met
#   - not met
#   - unproven
#   - not applicable
#   remedy: >-
#     shim the starter, or correct the place of the ring gear on the flywheel or of the
#     starter in the adapter
#   caution: >-
#     take the battery off before the pinion is thrown out by hand
#   reviewed: 2026-11-25
#   since: 0.1.0
#   waivable: true
package rules.bell.starter_mesh

import data.lib.judge

applies := judge.all_of([
	judge.negate(judge.when("build.transmission.bell.as_made", {true})),
	judge.when_there("build.transmission.starter"),
])

findings contains judge.about("transmission.starter.ring_distance", judge.worst([
	judge.within("figures.bell.pinion_gap", "limits.bell.pinion_near", "limits.bell.pinion_far"),
	judge.limit_min("figures.bell.pinion_share", "limits.bell.pinion_share"),
]))
