# METADATA
# title: the laden vehicle weighs no more than its gross rating
# description: >-
#   The fully laden vehicle stays within the gross vehicle weight rating on the plate. A
#   heavier engine takes its mass from the payload; who forgets it hands over an overloaded
#   vehicle whose brakes were sized for less.
# custom:
#   level: must
#   hold: plan
#   basis: manufacturer
#   source: gross vehicle weight rating on the chassis maker's certification label
#   needs_basis:
#     plan: estimated
#     install: claimed
#     inspection: documented
#   outcomes:
#   - met
#   - not met
#   - unproven
#   remedy: >-
#     take mass out, or write a smaller payload into the hand-over papers; only the maker or
#     the authority can raise the rating
#   reviewed: 2026-11-25
#   since: 0.1.0
#   waivable: false
package rules.mass.gross_rating

import data.lib.judge

findings contains judge.about(
	"chassis.ratings.gross",
	judge.limit_max("figures.mass.total_laden", "build.chassis.ratings.gross"),
)
