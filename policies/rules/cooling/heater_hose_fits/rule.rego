# METADATA
# title: heater hoses fit the spigots of the engine
# description: >-
#   The inside of the heater hose is the size of the spigot on the engine, 5/8 in on most. A
#   hose a size too large is strangled by its clamp and blows off hot; one too small splits
#   at the bead.
# custom:
#   level: should
#   hold: install
#   basis: common-practice
#   source: >-
#     common practice: heater hose is 5/8 in; a clamp closes little and a hose stretches
#     little
#   outcomes:
#   - met
#   - not met
#   - unproven
#   - not applicable
#   remedy: >-
#     fit hose of the size of the spigot, or a reducer with a bead at each end
#   caution: >-
#     let the engine cool and lose its pressure before a hose is taken off; coolant scalds
#   reviewed: 2026-11-25
#   since: 0.1.0
#   waivable: true
package rules.cooling.heater_hose_fits

import data.lib.judge

applies := judge.when_there("build.cooling")

findings contains judge.about("cooling.heater_hose", judge.within(
	"figures.cooling.heater_hose_stretch",
	"limits.cooling.hose_loose",
	"limits.cooling.hose_tight",
))
