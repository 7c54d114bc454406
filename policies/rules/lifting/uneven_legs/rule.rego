# METADATA
# title: where legs hang unlike, the steeper bears its pull
# description: >-
#   An engine hangs by eyes that are not midway: the steeper leg takes most of it. Each leg
#   is tagged for its own pull; reckoned as if both were alike, the sling breaks at a load
#   it was bought for.
# custom:
#   level: must
#   hold: mockup
#   basis: manufacturer
#   source: >-
#     working load limit on the tag of the sling; the pull of two unlike legs is statics
#   outcomes:
#   - met
#   - not met
#   - unproven
#   - not applicable
#   remedy: >-
#     use a sling with a higher working load limit, or move the hook over the centre of
#     gravity with a leveller; legs_alike is true where it hangs midway
#   caution: >-
#     a sling without a readable tag is scrap; never stand or reach under a load on a hook;
#     lower it onto stands before working on it. Lifting gear and its use come under local
#     codes: where they ask for a trained or licensed person, call one
#   reviewed: 2026-11-25
#   since: 0.1.0
#   waivable: false
package rules.lifting.uneven_legs

import data.lib.judge

applies := judge.when_listed("build.lifting.lifts")

findings contains _steeper(id) if some id in judge.each("build.lifting.lifts")

# By the angles where they are written, else by what a tape measures.
_steeper(id) := judge.unasked(_alike(id)) if {
	judge.holds(_alike(id), true)
} else := judge.worst([
	_borne(id, "figures.lifting.first_leg_tension.*"),
	_borne(id, "figures.lifting.second_leg_tension.*"),
]) if {
	count(judge.lacks(judge.of(id, "build.lifting.lifts.*.first_angle"))) == 0
} else := judge.worst([
	_borne(id, "figures.lifting.first_leg_by_tape.*"),
	_borne(id, "figures.lifting.second_leg_by_tape.*"),
])

_borne(id, tension) := judge.limit_max(judge.of(id, tension), judge.of(id, "build.lifting.lifts.*.leg_limit"))

_alike(id) := judge.of(id, "build.lifting.lifts.*.legs_alike")
