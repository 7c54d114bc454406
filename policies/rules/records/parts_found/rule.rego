# METADATA
# title: no part is still to be found when work begins
# description: >-
#   Before anything is taken apart every part on the list is ordered or in hand. A truck
#   stripped to its frame waits half a year for a bell adapter that nobody makes, and
#   pays for the bay.
# custom:
#   level: should
#   hold: strip
#   basis: common-practice
#   source: >-
#     common practice: adapter, mounts and shafts in sight before the first bolt
#   outcomes:
#   - met
#   - not met
#   - unproven
#   - not applicable
#   remedy: >-
#     order the part, or choose one that can be had, before anything is taken apart
#   reviewed: 2026-11-25
#   since: 0.1.0
#   waivable: true
package rules.records.parts_found

import data.lib.judge

applies := judge.when_listed("build.parts")

findings contains judge.one_of(judge.of(id, "build.parts.*.state"), {"ordered", "in-hand", "fitted"}) if {
	some id in judge.each("build.parts")
}
