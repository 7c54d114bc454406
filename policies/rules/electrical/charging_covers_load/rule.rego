# METADATA
# title: the alternator covers the continuous load
# description: >-
#   The continuous load of the vehicle stays within a share of the alternator's rating,
#   because a hot alternator gives less than its label. What is not covered comes out of the
#   battery until it is empty.
# custom:
#   level: must
#   hold: install
#   basis: physics
#   source: >-
#     energy balance; a hot alternator gives some 20 per cent less than its label (common
#     practice)
#   outcomes:
#   - met
#   - not met
#   - unproven
#   - not applicable
#   reasons:
#     no-alternator: there is no alternator, and the loads empty the battery
#   remedy: fit a larger alternator, or take load off
#   reviewed: 2026-11-25
#   since: 0.1.0
#   waivable: true
package rules.electrical.charging_covers_load

import data.lib.judge

applies := judge.when_listed("build.electrical.loads")

findings contains judge.about(
	"electrical.alternator.rated_output",
	judge.limit_max("figures.electrical.charging_use", "limits.electrical.charging_use"),
) if {
	not judge.is_none("build.electrical.alternator")
}

findings contains judge.because(
	"no-alternator",
	judge.present_at("build.electrical.alternator.rated_output", "install"),
) if {
	judge.is_none("build.electrical.alternator")
}
