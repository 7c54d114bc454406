# METADATA
# title: the belt runs in one plane
# description: >-
#   The grooves of crank pulley and alternator are in line. A bracket that is a few
#   millimetres out throws the belt or wears it to cords, and where the same belt drives
#   the water pump the engine boils with it.
# custom:
#   level: should
#   hold: install
#   basis: memory
#   source: >-
#     a third of a degree, some 1.7 mm in 300 mm, that belt makers allow for a ribbed
#     belt, from memory; a V-belt takes half a degree
#   outcomes:
#   - met
#   - not met
#   - unproven
#   - not applicable
#   remedy: shim or machine the bracket until a straightedge lies on both pulleys
#   caution: >-
#     keep hands, sleeves and tools out of belts and fan; work on them with the battery
#     disconnected
#   reviewed: 2026-11-25
#   since: 0.1.0
#   waivable: true
package rules.electrical.belt_in_line

import data.lib.judge

applies := judge.when_there("build.electrical.alternator.centres")

findings contains judge.about(
	"electrical.alternator.offset",
	judge.limit_max("figures.electrical.belt_misalignment", "limits.electrical.belt_misalignment"),
)
