# METADATA
# title: every steering joint is secured
# description: >-
#   Each joint that was moved, changed or taken apart has its bolt or screw in the groove or
#   dimple of the shaft, locked and marked, every spline covered. A joint held by friction
#   alone lets go without warning.
# custom:
#   level: must
#   hold: first-start
#   basis: own-record
#   source: >-
#     the build's own record; how a joint is secured is for its maker to say
#   outcomes:
#   - met
#   - not met
#   - unproven
#   - not applicable
#   remedy: >-
#     set screw or bolt where the maker of the joint wants it, lock and mark it, and have a
#     second person look
#   caution: >-
#     a steering that binds once kills: turn it lock to lock at full bump before the vehicle
#     rolls; its parts come under local codes, and welding on them is for licensed hands
#   reviewed: 2026-11-25
#   since: 0.1.0
#   waivable: false
package rules.steering.joints_secured

import data.lib.judge

applies := judge.when_listed("build.steering.couplings")

findings contains judge.one_of(judge.of(id, "build.steering.couplings.*.secured"), {true}) if {
	some id in judge.each("build.steering.couplings")
}
