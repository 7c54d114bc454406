# METADATA
# title: every part of the list is on the vehicle
# description: >-
#   When the vehicle is shown each part of its list is fitted. A heat shield or a
#   bracket that is still on the bench is missed by nobody until it has burnt a hose or
#   broken a pipe.
# custom:
#   level: should
#   hold: inspection
#   basis: own-record
#   source: the build's own list of parts
#   outcomes:
#   - met
#   - not met
#   - unproven
#   - not applicable
#   remedy: fit it, or take it off the list with a word in the work list why
#   reviewed: 2026-11-25
#   since: 0.1.0
#   waivable: true
package rules.records.parts_fitted

import data.lib.judge

applies := judge.when_listed("build.parts")

findings contains judge.one_of(judge.of(id, "build.parts.*.state"), {"fitted"}) if {
	some id in judge.each("build.parts")
}
