# METADATA
# title: hot coolant finds room to grow
# description: >-
#   The empty space above the cold mark takes what the coolant grows by until it is hot. Too
#   small a bottle spills at each run and draws air back at each cooling down, until the pump
#   pumps foam.
# custom:
#   level: should
#   hold: first-start
#   basis: physics
#   source: >-
#     density of ethylene glycol solutions by an ASHRAE table, 21 to 93 °C; engine makers ask
#     for more, 6 per cent of the system (from memory)
#   outcomes:
#   - met
#   - not met
#   - unproven
#   - not applicable
#   remedy: >-
#     fit a larger expansion tank or bottle, or lower the cold mark where the tank stays
#     covered
#   caution: >-
#     let the engine cool and lose its pressure before cap or hose is opened; coolant scalds
#   reviewed: 2026-11-25
#   since: 0.1.0
#   waivable: true
package rules.cooling.expansion_space

import data.lib.judge

applies := judge.when_there("build.cooling")

findings contains judge.about(
	"cooling.expansion_volume",
	judge.limit_max("figures.cooling.expansion_use", "limits.cooling.expansion_use"),
)
