# METADATA
# title: the alternator turns fast enough at idle
# description: >-
#   At low idle the alternator turns faster than its cut-in speed. Petrol pulleys on a slow
#   diesel leave it below, and the charge lamp glows until the road is fast.
# custom:
#   level: should
#   hold: install
#   basis: manufacturer
#   source: cut-in speed from the alternator's maker; pulley ratio
#   outcomes:
#   - met
#   - not met
#   - unproven
#   - not applicable
#   remedy: fit a smaller alternator pulley, and check its speed at governed engine speed too
#   reviewed: 2026-11-25
#   since: 0.1.0
#   waivable: true
package rules.electrical.alternator_speed

import data.lib.judge

applies := judge.when_there("build.electrical.alternator.cut_in_speed")

findings contains judge.about(
	"electrical.alternator.pulley",
	judge.limit_min("figures.electrical.alternator_cut_in_margin", "limits.electrical.cut_in_margin"),
)
