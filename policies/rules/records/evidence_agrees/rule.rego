# METADATA
# title: evidence says what the manifest says
# description: >-
#   Where a paper shows a value, the manifest says the same. A ticket that reads otherwise
#   is noticed by the inspector first.
# custom:
#   level: must
#   hold: plan
#   basis: own-record
#   source: the build's own evidence list against its own values
#   outcomes:
#   - met
#   - not met
#   - unproven
#   - not applicable
#   remedy: correct the value, or replace the paper by the one that shows it
#   reviewed: 2026-11-25
#   since: 0.1.0
#   waivable: true
package rules.records.evidence_agrees

import data.lib.judge

_listed := judge.when_listed("build.evidence")

applies := _listed if _listed.state != "yes"

applies := judge.any_of([shows |
	some id in judge.each("build.evidence")
	shows := judge.when_listed(judge.of(id, "build.evidence.*.shows").path)
]) if {
	_listed.state == "yes"
}

findings contains judge.agrees(id[0], id[1]) if {
	some id in judge.each("build.evidence.*.shows")
}

findings contains finding if some finding in judge.unlisted("build.evidence.*.shows")
