# METADATA
# title: the slave cylinder moves far enough to release
# description: >-
#   Pedal, master and slave cylinder together move the release bearing as far as the maker
#   of the clutch asks. A master cylinder of the old engine on the slave of the new one
#   leaves the clutch dragging, and the gearbox is blamed.
# custom:
#   level: must
#   hold: install
#   basis: manufacturer
#   source: >-
#     release travel from the maker of the clutch; equal volumes in master and slave
#   outcomes:
#   - met
#   - not met
#   - unproven
#   - not applicable
#   remedy: >-
#     fit a larger master bore or a smaller slave bore, or lengthen the pedal travel
#   caution: >-
#     a clutch that does not release lets the vehicle start off in gear: chock the wheels
#     for the first start
#   reviewed: 2026-11-25
#   since: 0.1.0
#   waivable: true
package rules.hydraulics.clutch_release

import data.lib.judge

applies := judge.all_of([
	judge.when("build.hydraulics.clutch.kind", {"hydraulic"}),
	judge.unless("build.transmission.type", {"automatic"}),
])

findings contains judge.about(
	"hydraulics.clutch.slave_need",
	judge.limit_min("figures.hydraulics.slave_travel", "build.hydraulics.clutch.slave_need"),
)
