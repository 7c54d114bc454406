# METADATA
# title: the alternator stays below its highest speed
# description: >-
#   At governed engine speed the alternator turns no faster than its maker allows. The
#   small pulley that charges at a diesel's idle bursts the rotor of the same alternator
#   on a petrol engine.
# custom:
#   level: should
#   hold: install
#   basis: manufacturer
#   source: >-
#     highest continuous speed from the alternator's maker; pulley ratio without slip
#   outcomes:
#   - met
#   - not met
#   - unproven
#   - not applicable
#   remedy: fit a larger alternator pulley, and check its speed at idle too
#   caution: >-
#     keep hands, sleeves and tools out of belts and fan; work on them with the battery
#     disconnected
#   reviewed: 2026-11-25
#   since: 0.1.0
#   waivable: true
package rules.electrical.alternator_overspeed

import data.lib.judge

applies := judge.when_there("build.electrical.alternator")

findings contains judge.about(
	"electrical.alternator.speed_limit",
	judge.limit_max("figures.electrical.alternator_speed_use", "limits.electrical.alternator_speed_use"),
)
