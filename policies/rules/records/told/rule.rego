# METADATA
# title: insurer and owner know of the new engine
# description: >-
#   The insurer was told of the change in writing, and the owner, unless it is his own work,
#   was shown the stop, the warnings and the service plan. A vehicle that burns with another
#   engine than the policy names is paid by its owner.
# custom:
#   level: should
#   hold: handover
#   basis: common-practice
#   source: >-
#     common practice: a letter to the insurer before the vehicle is driven, and an hour
#     with the owner
#   outcomes:
#   - met
#   - not met
#   - unproven
#   remedy: >-
#     write to the insurer, go round the vehicle with the owner, and write down both
#     days
#   reviewed: 2026-11-25
#   since: 0.1.0
#   waivable: true
package rules.records.told

import data.lib.judge

findings contains judge.dated_at("build.handover.insurer", "handover")

findings contains judge.dated_at("build.handover.owner", "handover") if {
	not judge.holds("build.registration.installer", "owner")
}
