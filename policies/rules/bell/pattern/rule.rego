# METADATA
# title: the bolts of engine and bell meet
# description: >-
#   The bell has the bolt pattern of the engine, or an adapter joins the two. The names of
#   two patterns are compared while the vehicle is still whole: a bell that does not fit is
#   found when the old engine lies in the yard.
# custom:
#   level: must
#   hold: strip
#   basis: own-record
#   source: >-
#     the build's own record of the patterns, by their names in the trade
#   outcomes:
#   - met
#   - not met
#   - unproven
#   - not applicable
#   remedy: >-
#     read both patterns again off the parts, and find the bell or the adapter that joins
#     them
#   reviewed: 2026-11-25
#   since: 0.1.0
#   waivable: true
package rules.bell.pattern

import data.lib.judge

applies := judge.negate(judge.when("build.transmission.bell.as_made", {true}))

_pattern := "build.transmission.bell.pattern"

findings contains judge.equals("build.engine.rear.pattern", _pattern) if {
	judge.is_none("build.transmission.bell.adapter")
}

findings contains judge.equals("build.engine.rear.pattern", "build.transmission.bell.adapter_front") if {
	not judge.is_none("build.transmission.bell.adapter")
}

findings contains judge.equals(_pattern, "build.transmission.bell.adapter_rear") if {
	not judge.is_none("build.transmission.bell.adapter")
}
