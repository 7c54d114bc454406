# METADATA
# title: slave travel keeps a reserve over what releases
# description: >-
#   The slave cylinder moves a tenth further than the clutch needs. Hoses swell when hot and
#   the pedal wears: without the reserve the clutch drags in summer.
# custom:
#   level: should
#   hold: install
#   basis: common-practice
#   source: >-
#     common practice: a tenth more than the release travel
#   outcomes:
#   - met
#   - not met
#   - unproven
#   - not applicable
#   remedy: >-
#     fit the next larger master bore, or a stiffer hose
#   reviewed: 2026-11-25
#   since: 0.1.0
#   waivable: true
package rules.hydraulics.clutch_reserve

import data.lib.judge

applies := judge.all_of([
	judge.when("build.hydraulics.clutch.kind", {"hydraulic"}),
	judge.unless("build.transmission.type", {"automatic"}),
])

findings contains judge.about(
	"hydraulics.clutch.slave_bore",
	judge.limit_min("figures.hydraulics.release_margin", "limits.hydraulics.release_margin"),
)
