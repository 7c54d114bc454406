# METADATA
# title: the laden vehicle does not lean to one side
# description: >-
#   Engine, second battery, tank and tools together keep the centre of gravity within 50 mm
#   of the centreline. Everything new on one side makes one front wheel lock first and the
#   vehicle pull under the brakes.
# custom:
#   level: should
#   hold: mockup
#   basis: common-practice
#   source: >-
#     common practice: 50 mm to either side, while places in the bay are still to be chosen
#   outcomes:
#   - met
#   - not met
#   - unproven
#   remedy: >-
#     move a battery, a tank or the tool chest to the other side while it is still on paper
#   reviewed: 2026-11-25
#   since: 0.1.0
#   waivable: true
package rules.mass.centred

import data.lib.judge

findings contains judge.about("masses.carried", judge.within(
	"figures.mass.cg_to_the_right_laden",
	"limits.mass.centred_left",
	"limits.mass.centred_right",
))
