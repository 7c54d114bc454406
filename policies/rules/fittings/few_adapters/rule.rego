# METADATA
# title: a chain has few adapters
# description: >-
#   A sender sits in its port with one adapter, two at the most. Each one more is a lever
#   for vibration and another joint that can leak; a long stack breaks off on the first
#   rough road.
# custom:
#   level: should
#   hold: install
#   basis: common-practice
#   source: >-
#     common practice: one bushing or adapter between port and sender
#   outcomes:
#   - met
#   - not met
#   - unproven
#   - not applicable
#   remedy: replace the stack by one adapter, or move the sender to a bracket on a hose
#   reviewed: 2026-11-25
#   since: 0.1.0
#   waivable: true
package rules.fittings.few_adapters

import data.lib.judge

applies := judge.when_listed("build.fittings")

findings contains judge.at_most_items(
	judge.of(id, "build.fittings.*.adapters"),
	"limits.fittings.adapters",
) if {
	some id in judge.each("build.fittings")
}
