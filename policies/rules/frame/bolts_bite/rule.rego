# METADATA
# title: mount bolts bite far enough into their thread
# description: >-
#   Each bolt engages 0.8 diameters of a nut, one of steel, one and a half of cast iron or
#   two of aluminium. Fewer threads in the block strip when the bolt is tightened, with the
#   engine on the hook.
# custom:
#   level: should
#   hold: install
#   basis: common-practice
#   source: >-
#     common practice: engagement by the metal that the thread is cut in
#   outcomes:
#   - met
#   - not met
#   - unproven
#   - not applicable
#   remedy: >-
#     use a longer bolt, a thinner spacer, or a thread insert; measure the hole so that the
#     bolt does not bottom
#   reviewed: 2026-11-25
#   since: 0.1.0
#   waivable: true
package rules.frame.bolts_bite

import data.lib.judge

applies := judge.when_listed("build.frame.bolts")

_needed := {
	"nut": "limits.frame.engagement_nut",
	"steel": "limits.frame.engagement_steel",
	"cast-iron": "limits.frame.engagement_cast_iron",
	"aluminium": "limits.frame.engagement_aluminium",
}

findings contains judge.limit_min_for(
	judge.of(id, "figures.fasteners.engagement.*"),
	judge.of(id, "build.frame.bolts.*.into"),
	_needed,
) if {
	some id in judge.each("build.frame.bolts")
}
