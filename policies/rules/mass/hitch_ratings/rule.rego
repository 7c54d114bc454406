# METADATA
# title: trailer and tongue are within what the maker allows
# description: >-
#   The trailer weighs no more than the maker of the vehicle allows, and presses no more on
#   the hitch than its plate says. A hitch pulled out of a frame takes trailer and frame end
#   with it.
# custom:
#   level: must
#   hold: plan
#   basis: manufacturer
#   source: >-
#     trailer rating from the chassis maker's towing table, tongue rating from the plate of
#     the hitch
#   outcomes:
#   - met
#   - not met
#   - unproven
#   - not applicable
#   remedy: >-
#     tow a lighter trailer, or shift its load; a stronger hitch does not raise what the
#     maker of the vehicle allows
#   caution: >-
#     weighing a coupled trailer: level ground, chocks under both, nobody between vehicle
#     and trailer
#   reviewed: 2026-11-25
#   since: 0.1.0
#   waivable: false
package rules.mass.hitch_ratings

import data.lib.judge

applies := judge.when_there("build.masses.trailer")

_pairs := {
	["build.masses.trailer.mass", "build.chassis.ratings.trailer"],
	["build.masses.trailer.tongue", "build.chassis.ratings.tongue"],
}

findings contains _allowed(mass, rating) if some [mass, rating] in _pairs

# None for a rating: the maker allows no towing, or there is no hitch.
_allowed(mass, rating) := judge.present_at(rating, "plan") if {
	judge.is_none(rating)
} else := judge.limit_max(mass, rating)
