# METADATA
# title: the battery suits the size of the diesel
# description: >-
#   The cold cranking current per litre of swept volume is what diesels of this kind need.
#   It tells, before a data sheet is found, whether one battery will do.
# custom:
#   level: should
#   hold: plan
#   basis: common-practice
#   source: >-
#     common practice: from 120 A of cold cranking current for each litre of a large direct-
#     injection diesel
#   outcomes:
#   - met
#   - not met
#   - unproven
#   - not applicable
#   remedy: plan a second battery and its place now, while the engine bay is still on paper
#   reviewed: 2026-11-25
#   since: 0.1.0
#   waivable: true
package rules.electrical.battery_per_litre

import data.lib.judge

applies := judge.when("build.engine.fuel", {"diesel"})

findings contains judge.about(
	"electrical.battery.cold_cranking_current",
	judge.limit_min("figures.electrical.cca_per_displacement", "limits.electrical.cca_per_litre"),
)
