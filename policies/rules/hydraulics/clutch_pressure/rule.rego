# METADATA
# title: hose and slave cylinder bear the clutch pressure
# description: >-
#   With the clutch open the line holds no more than hose and slave cylinder are made
#   for. A small slave on a strong clutch blows its seal in traffic, in gear.
# custom:
#   level: should
#   hold: install
#   basis: manufacturer
#   source: pressure allowed by the maker of hose and slave cylinder
#   outcomes:
#   - met
#   - not met
#   - unproven
#   - not applicable
#   remedy: >-
#     fit a slave cylinder of larger bore and the master that belongs to it, or a
#     braided hose of higher rating
#   caution: >-
#     a clutch that does not release lets the vehicle start off in gear: chock the
#     wheels for the first start
#   reviewed: 2026-11-25
#   since: 0.1.0
#   waivable: true
package rules.hydraulics.clutch_pressure

import data.lib.judge

applies := judge.all_of([
	judge.when("build.hydraulics.clutch.kind", {"hydraulic"}),
	judge.unless("build.transmission.type", {"automatic"}),
	judge.when_there("build.hydraulics.clutch.pressure_limit"),
])

findings contains judge.about(
	"hydraulics.clutch.pressure_limit",
	judge.limit_max("figures.hydraulics.line_pressure_use", "limits.hydraulics.line_pressure_use"),
)
