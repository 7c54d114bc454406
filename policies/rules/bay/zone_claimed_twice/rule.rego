# METADATA
# title: no place in the bay is claimed twice
# description: >-
#   Where two parts want one corner, the other has found another place before the engine is
#   set. Washer bottle, second battery and charge pipe want the same one, and each is
#   thought of alone.
# custom:
#   level: must
#   hold: install
#   basis: own-record
#   source: >-
#     the build's own list of what sits where; that washer bottle, second battery and charge
#     pipe want one corner is common practice
#   outcomes:
#   - met
#   - not met
#   - unproven
#   - not applicable
#   remedy: >-
#     find the other part another place, try both in, and note it as settled
#   reviewed: 2026-11-25
#   since: 0.1.0
#   waivable: true
package rules.bay.zone_claimed_twice

import data.lib.judge

applies := judge.when_listed("build.bay.zones")

findings contains judge.one_of(judge.of(id, "build.bay.zones.*.settled"), {true}) if {
	some id in judge.each("build.bay.zones")
	not judge.is_none(judge.of(id, "build.bay.zones.*.also_wanted").path)
}

findings contains judge.one_of(judge.of(id, "build.bay.zones.*.also_wanted"), {"none"}) if {
	some id in judge.each("build.bay.zones")
	judge.is_none(judge.of(id, "build.bay.zones.*.also_wanted").path)
}
