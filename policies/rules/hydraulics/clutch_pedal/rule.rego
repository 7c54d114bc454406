# METADATA
# title: the clutch pedal can be worked all day
# description: >-
#   The stronger clutch of the new engine asks no more than 180 N of the foot. Above
#   that drivers rest half-way, slip the clutch on every hill, and the lining is gone in
#   a season.
# custom:
#   level: should
#   hold: install
#   basis: common-practice
#   source: >-
#     common practice: 150 to 180 N, and 300 N at the very most
#   outcomes:
#   - met
#   - not met
#   - unproven
#   - not applicable
#   remedy: >-
#     fit a smaller master bore where travel allows, a longer pedal ratio, or an
#     assisted clutch
#   reviewed: 2026-11-25
#   since: 0.1.0
#   waivable: true
package rules.hydraulics.clutch_pedal

import data.lib.judge

applies := judge.all_of([
	judge.when("build.hydraulics.clutch.kind", {"hydraulic"}),
	judge.unless("build.transmission.type", {"automatic"}),
])

findings contains judge.about(
	"hydraulics.clutch.release_load",
	judge.limit_max("figures.hydraulics.pedal_force", "limits.hydraulics.pedal_force"),
)
