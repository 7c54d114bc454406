# METADATA
# title: the battery meets the engine maker's cranking need
# description: >-
#   The cold cranking current of the batteries together is at least what the engine's maker
#   asks for, where he names it. Petrol batteries turn a diesel too slowly to start it.
# custom:
#   level: must
#   hold: install
#   basis: manufacturer
#   source: >-
#     cold cranking need from the engine maker's data sheet, against the label of the
#     battery (SAE J537 test)
#   outcomes:
#   - met
#   - not met
#   - unproven
#   - not applicable
#   remedy: fit a larger battery or a second one in parallel, of the same age and type
#   caution: >-
#     batteries are heavy and hold acid: lift with a strap, wear goggles, keep flames away
#   reviewed: 2026-11-25
#   since: 0.1.0
#   waivable: true
package rules.electrical.battery_need

import data.lib.judge

# Where the maker names none, the rule for each litre is what is left.
applies := judge.when_there("build.engine.cranking_need")

findings contains judge.about(
	"electrical.battery.cold_cranking_current",
	judge.limit_min("figures.electrical.cca_margin", "limits.electrical.cca_margin"),
)
