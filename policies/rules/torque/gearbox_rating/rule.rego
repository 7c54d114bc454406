# METADATA
# title: the gearbox takes the torque of the engine
# description: >-
#   The peak torque of the engine is no more than the input torque that the maker of the
#   gearbox allows. Where he prints none, an engine with as much torque that the chassis was
#   sold with before this gearbox stands for it. A turbo-diesel behind a gearbox made for a
#   petrol engine strips its gears at the first steep start.
# custom:
#   level: must
#   hold: strip
#   basis: manufacturer
#   source: >-
#     the gearbox maker's input torque rating; net torque of the engine, or 95 per cent of
#     gross
#   outcomes:
#   - met
#   - not met
#   - unproven
#   remedy: >-
#     use a gearbox rated for the engine, or have the engine set to a rating the gearbox
#     takes and its plate changed
#   reviewed: 2026-11-25
#   since: 0.1.0
#   waivable: true
package rules.torque.gearbox_rating

import data.lib.judge

findings contains judge.about(
	"transmission.input_torque_rating",
	judge.rated_or_sold(judge.limit_max("figures.torque.gearbox_input_use", "limits.torque.rating")),
)
