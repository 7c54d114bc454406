# METADATA
# title: the alternator covers the load at idle
# description: >-
#   At the engine's low idle the hot alternator still gives more than the continuous load
#   takes. A slow diesel with the old pulley may not charge at all in town or on the fire
#   line.
# custom:
#   level: should
#   hold: install
#   basis: common-practice
#   source: >-
#     common practice: hot idle output at or above the continuous load
#   outcomes:
#   - met
#   - not met
#   - unproven
#   - not applicable
#   remedy: fit a smaller alternator pulley or an alternator made for low speed
#   reviewed: 2026-11-25
#   since: 0.1.0
#   waivable: true
package rules.electrical.charging_at_idle

import data.lib.judge

applies := judge.when_there("build.electrical.alternator")

findings contains judge.about(
	"electrical.alternator.idle_output",
	judge.limit_min("figures.electrical.charging_reserve_idle", "limits.electrical.idle_reserve"),
)
