# METADATA
# title: a medium-duty chassis is between 8,500 and 14,000 lb
# description: >-
#   California calls a truck light-duty up to 8,500 lb of gross rating, medium-duty up to
#   14,000 lb and heavy-duty above. Engine and chassis are compared in this scheme. Older
#   model years had other bounds (from memory).
# custom:
#   level: should
#   hold: plan
#   basis: second-hand
#   source: reference notes on 13 CCR 1976, not read again
#   outcomes:
#   - met
#   - not met
#   - unproven
#   - not applicable
#   remedy: >-
#     read class and gross rating off the maker's labels again, and ask the referee which
#     class was in force for the model year
#   reviewed: 2026-11-25
#   since: 0.1.0
#   waivable: true
package regions["us-ca"].medium_class

import data.lib.judge

applies := judge.when("build.chassis.certification.class", {"medium-duty"})

findings contains judge.within(
	"build.chassis.ratings.gross",
	"limits.us_ca.medium_low",
	"limits.us_ca.light_gross",
)
