# METADATA
# title: the hot charge hoses bear the heat
# description: >-
#   The air behind the compressor is no hotter than its hoses are made for. Heater and
#   coolant hose, and much silicone sold by colour, is made for 120 to 180 °C; behind a small
#   turbine at altitude the air is hotter, and the hose splits on a grade.
# custom:
#   level: should
#   hold: road-test
#   basis: manufacturer
#   source: >-
#     highest continuous temperature from the maker of the hose
#   outcomes:
#   - met
#   - not met
#   - unproven
#   - not applicable
#   remedy: >-
#     fit hoses made for the temperature between turbine and cooler, in short pieces joining
#     metal pipe
#   caution: >-
#     let exhaust and charge pipes cool before working on them; run engines where exhaust gas
#     is drawn off
#   reviewed: 2026-11-25
#   since: 0.1.0
#   waivable: true
package rules.air.hose_heat

import data.lib.judge

applies := judge.all_of([
	judge.when_there("build.charge_air"),
	judge.unless("build.engine.induction", {"natural"}),
])

findings contains judge.about(
	"charge_air.hose_temperature",
	judge.limit_max("build.charge_air.compressor_out", "build.charge_air.hose_temperature"),
)
