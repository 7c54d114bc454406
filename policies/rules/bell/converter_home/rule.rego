# METADATA
# title: the converter is home in the pump and clear of the plate
# description: >-
#   With the bell bolted up and the converter pushed home in the gearbox, its lugs stand 2
#   to 6 mm behind the flexplate. With no gap it is not home, or a spacer is missing: the
#   bolts press it into the oil pump, which breaks at the first start. With too much it is
#   drawn out of the pump again.
# custom:
#   level: should
#   hold: install
#   basis: common-practice
#   source: >-
#     common practice: 1/8 to 3/16 in, makers between 2 and 6 mm, from memory; the gearbox
#     maker's own figure goes first
#   needs_basis:
#     install: measured
#   outcomes:
#   - met
#   - not met
#   - unproven
#   - not applicable
#   remedy: >-
#     part the bell again where the gap is too small, turn the converter and push until it
#     has dropped in by all its steps; change the spacer at the crankshaft where it stays
#     too small or too large
#   caution: >-
#     take the battery off before the engine is barred over by hand; hold the converter in
#     with a strap while the gearbox is moved, it falls out
#   reviewed: 2026-11-27
#   since: 0.1.0
#   waivable: true
package rules.bell.converter_home

import data.lib.judge

applies := judge.when("build.transmission.type", {"automatic"})

findings contains judge.within(
	"build.transmission.bell.converter_gap",
	"limits.bell.converter_near",
	"limits.bell.converter_far",
)
