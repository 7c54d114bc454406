# METADATA
# title: the transfer case takes the torque of first gear
# description: >-
#   What the gearbox makes of the peak torque in first gear is no more than the transfer
#   case may take, or the engine has no more torque than one that the chassis was sold with
#   before the same gearbox and case. A gearbox with a lower first gear than the old one
#   overloads a case that carried the same engine before.
# custom:
#   level: must
#   hold: strip
#   basis: manufacturer
#   source: >-
#     the transfer case maker's input torque rating; gears in series without losses
#   outcomes:
#   - met
#   - not met
#   - unproven
#   - not applicable
#   remedy: >-
#     use a transfer case rated for it, or a gearbox with a taller first gear
#   reviewed: 2026-11-25
#   since: 0.1.0
#   waivable: true
package rules.torque.transfer_rating

import data.lib.judge

applies := judge.when_there("build.transfer_case")

findings contains judge.about(
	"transfer_case.input_torque_rating",
	judge.rated_or_sold(judge.limit_max("figures.torque.transfer_input_use", "limits.torque.rating")),
)
