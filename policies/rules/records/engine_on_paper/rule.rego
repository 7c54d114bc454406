# METADATA
# title: power, torque and mass of the engine have a source
# description: >-
#   When the vehicle is shown, power, torque and mass of the engine come from a data
#   sheet or a scale, not from an advertisement. Loads, gearbox and brakes were judged
#   by them; an inspector asks where they are from.
# custom:
#   level: should
#   hold: inspection
#   basis: own-record
#   source: >-
#     what an inspector compares: the file against the data sheet of the engine
#   needs_basis:
#     inspection: documented
#   outcomes:
#   - met
#   - unproven
#   remedy: find the maker's data sheet, or weigh the engine, and write down the basis
#   reviewed: 2026-11-25
#   since: 0.1.0
#   waivable: true
package rules.records.engine_on_paper

import data.lib.judge

_values := [
	"build.engine.rated_power",
	"build.engine.peak_torque",
	"build.engine.mass",
]

findings contains judge.present_at(value, "inspection") if some value in _values
