# METADATA
# title: vent lines rise to the expansion tank all the way
# description: >-
#   Where the filler is not the highest point, lines from the top of the engine and of the
#   radiator rise without a dip to the expansion tank. A taller engine under the old bonnet
#   traps its air in the head, and no bleeding lets it out.
# custom:
#   level: should
#   hold: install
#   basis: common-practice
#   source: >-
#     common practice, as in engine makers' installation guides (from memory): vents of 3 to
#     6 mm that rise all the way, tank above everything
#   outcomes:
#   - met
#   - not met
#   - unproven
#   - not applicable
#   remedy: >-
#     raise the expansion tank above engine and radiator, and run each vent to its own neck
#     above the coolant
#   caution: >-
#     let the engine cool and lose its pressure before cap or hose is opened; coolant scalds
#   reviewed: 2026-11-25
#   since: 0.1.0
#   waivable: true
package rules.cooling.vents_rise

import data.lib.judge

applies := judge.when_there("build.cooling.vents_rise")

findings contains judge.one_of("build.cooling.vents_rise", {true})
