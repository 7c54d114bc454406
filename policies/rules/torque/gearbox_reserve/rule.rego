# METADATA
# title: the gearbox keeps a reserve over the engine torque
# description: >-
#   The peak torque of the engine stays a tenth below what the gearbox takes. Ratings hold
#   for a gearbox in good order and a driver who spares it; a pump turned up a little eats
#   the rest. An engine no stronger than one that the chassis was sold with has it.
# custom:
#   level: should
#   hold: plan
#   basis: common-practice
#   source: >-
#     common practice: warn above nine tenths of a rating
#   outcomes:
#   - met
#   - not met
#   - unproven
#   remedy: >-
#     look for a stronger gearbox while the engine is not bought yet, or for an engine with
#     less torque
#   reviewed: 2026-11-25
#   since: 0.1.0
#   waivable: true
package rules.torque.gearbox_reserve

import data.lib.judge

findings contains judge.about(
	"transmission.input_torque_rating",
	judge.rated_or_sold(judge.limit_max("figures.torque.gearbox_input_use", "limits.torque.gearbox_reserve")),
)
