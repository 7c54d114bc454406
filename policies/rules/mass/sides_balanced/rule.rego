# METADATA
# title: the vehicle as found stands evenly on both sides
# description: >-
#   The wheels of each side carry between 48 and 52 per cent of the vehicle as found. More
#   on one side means a tired spring, a bent frame or a scale that was not level, and every
#   slope and height measured after that inherits it.
# custom:
#   level: should
#   hold: strip
#   basis: common-practice
#   source: >-
#     common practice: half and half, two per cent either way, weighed empty on level ground
#   outcomes:
#   - met
#   - not met
#   - unproven
#   remedy: >-
#     weigh again on level ground with nobody aboard; where it stays, find the spring or the
#     bent frame before the vehicle is taken apart, and write it down as a fault
#   reviewed: 2026-11-25
#   since: 0.1.0
#   waivable: true
package rules.mass.sides_balanced

import data.lib.judge

findings contains judge.about("baseline.corner_weights", judge.within(
	"figures.mass.right_share_before",
	"limits.mass.sides_low",
	"limits.mass.sides_high",
))
