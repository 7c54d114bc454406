# METADATA
# title: the belt wraps far enough round the alternator
# description: >-
#   The belt lies on at least a third of the smaller pulley. With less it slips under
#   full charge: the battery is never full, and the belt glazes and squeals.
# custom:
#   level: should
#   hold: install
#   basis: common-practice
#   source: >-
#     common practice: 120 degrees on the smaller pulley, 140 for a ribbed belt
#   outcomes:
#   - met
#   - not met
#   - unproven
#   - not applicable
#   remedy: move the alternator away from the crankshaft, or lead the belt over an idler
#   caution: >-
#     keep hands, sleeves and tools out of belts and fan; work on them with the battery
#     disconnected
#   reviewed: 2026-11-25
#   since: 0.1.0
#   waivable: true
package rules.electrical.belt_wrap

import data.lib.judge

applies := judge.when_there("build.electrical.alternator.centres")

findings contains judge.about(
	"electrical.alternator.centres",
	judge.limit_min("figures.electrical.belt_wrap", "limits.electrical.belt_wrap"),
)
