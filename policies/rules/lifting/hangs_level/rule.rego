# METADATA
# title: the load hangs as it goes onto its mounts
# description: >-
#   The leveller reaches the centre of gravity, or without one the load hangs within 15
#   degrees of level. A powertrain that comes in nose up catches the tunnel, and somebody
#   ends up pulling on it by hand.
# custom:
#   level: should
#   hold: mockup
#   basis: common-practice
#   source: >-
#     common practice: 15 degrees either way; a hanging load turns until its centre of
#     gravity is below the hook (statics)
#   outcomes:
#   - met
#   - not met
#   - unproven
#   - not applicable
#   remedy: >-
#     move the lifting eyes, use a leveller with more travel, or lift engine and gearbox one
#     after the other
#   caution: >-
#     never stand or reach under a load on a hook; lower it onto stands before working on
#     it. Lifting gear and its use come under local codes: where they ask for a trained or
#     licensed person, call one
#   reviewed: 2026-11-25
#   since: 0.1.0
#   waivable: false
package rules.lifting.hangs_level

import data.lib.judge

applies := judge.when_listed("build.lifting.lifts")

findings contains judge.limit_max(judge.of(id, "figures.lifting.leveller_use.*"), "limits.lifting.leveller_use") if {
	some id in judge.each("build.lifting.lifts")
	_levelled(id)
}

findings contains judge.within(
	judge.of(id, "figures.lifting.tilt.*"),
	"limits.lifting.tilt_front",
	"limits.lifting.tilt_rear",
) if {
	some id in judge.each("build.lifting.lifts")
	not _levelled(id)
}

_levelled(id) if count(judge.lacks(judge.of(id, "build.lifting.lifts.*.leveller_travel"))) == 0
