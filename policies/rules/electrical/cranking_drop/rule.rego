# METADATA
# title: little voltage is lost on the way to the starter
# description: >-
#   Cables and contacts of the cranking loop lose no more than a small share of the system
#   voltage. A diesel that turns slowly does not start in the cold, and the cables get hot
#   trying.
# custom:
#   level: should
#   hold: install
#   basis: common-practice
#   source: >-
#     common practice: one volt in a 12 V loop, feed and return together
#   needs_basis:
#     install: claimed
#   outcomes:
#   - met
#   - not met
#   - unproven
#   remedy: fit thicker cable, shorten the loop, or clean and tin the joints
#   caution: >-
#     disconnect the negative cable first; a spanner across the battery melts; batteries
#     give off gas that burns
#   reviewed: 2026-11-25
#   since: 0.1.0
#   waivable: true
package rules.electrical.cranking_drop

import data.lib.judge

findings contains judge.about(
	"electrical.cranking",
	judge.limit_max("figures.electrical.cranking_drop_share", "limits.electrical.cranking_drop_share"),
)
