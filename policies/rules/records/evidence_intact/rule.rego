# METADATA
# title: evidence files are there and unchanged
# description: >-
#   Every evidence file is where the manifest says and is the one whose digest was recorded.
#   A photograph that was swapped or a ticket that was lost supports nothing.
# custom:
#   level: must
#   hold: plan
#   basis: own-record
#   source: the build's own evidence list and the digests recorded for it
#   outcomes:
#   - met
#   - not met
#   - unproven
#   - not applicable
#   remedy: >-
#     put the file back, or record the digests again after looking at what changed: trialfit
#     check --record-digests
#   reviewed: 2026-11-25
#   since: 0.1.0
#   waivable: true
package rules.records.evidence_intact

import data.lib.judge

applies := judge.when_listed("build.evidence")

findings contains judge.intact(id[0]) if {
	some id in judge.each("build.evidence")
}
