# METADATA
# title: the engine is no larger than its brakes were sold with
# description: >-
#   A car must not get an engine of greater displacement, power or torque than one that was
#   an option with the brakes it was made with. Each of the three is held against the
#   largest option; whether one option must cover all three, and what else is a car, is for
#   the state: its text counts station wagons with up to nine seats, and utilities and vans
#   that share the front of a car. Only passenger cars are examined here;
#   statement_of_requirements asks for the others.
# related_resources:
# - ref: http://www.austlii.edu.au/au/legis/sa/consol_reg/rtr1999355/s25.html
#   description: regulation 25 of 1999
# - ref: http://corrigan.austlii.edu.au/au/legis/sa/consol_reg//rtr1999355/s4.html
#   description: regulation 4 of 1999, definitions
# custom:
#   level: should
#   hold: plan
#   basis: regulation
#   source: >-
#     Road Traffic (Miscellaneous) Regulations 1999 of South Australia, regulation 25(3)(b),
#     with the definitions of regulation 4: an older consolidation, superseded in 2014,
#     whose successor was not read
#   outcomes:
#   - met
#   - not met
#   - unproven
#   - not applicable
#   reasons:
#     other-brakes: an engine this large was offered only with other brakes
#   remedy: >-
#     take the larger brakes of the line with the larger engine, or apply for a statement of
#     requirements before anything is bought
#   reviewed: 2026-11-25
#   since: 0.1.0
#   waivable: true
package regions["au-sa"].brake_options

import data.lib.judge

_quantities := [
	{
		"place": "engine.displacement",
		"against_largest": "figures.approval.displacement_over_option",
		"value": "build.engine.displacement",
		"offered": "build.chassis.engine_options.*.displacement",
	},
	{
		"place": "engine.rated_power",
		"against_largest": "figures.approval.power_over_option",
		"value": "build.engine.rated_power",
		"offered": "build.chassis.engine_options.*.rated_power",
	},
	{
		"place": "engine.peak_torque",
		"against_largest": "figures.approval.torque_over_option",
		"value": "build.engine.peak_torque",
		"offered": "build.chassis.engine_options.*.peak_torque",
	},
]

applies := judge.when("build.chassis.category", {"passenger-car"})

findings contains judge.about(quantity.place, _held(quantity)) if some quantity in _quantities

# Where no option is large enough, size alone decides.
_held(quantity) := judge.worst([_against_largest(quantity), judge.because("other-brakes", brakes)]) if {
	brakes := judge.best(_as_large(quantity))
} else := _against_largest(quantity)

_against_largest(quantity) := judge.limit_max(quantity.against_largest, "limits.au_sa.option_share")

# Options that are large enough, or may be, each with what is known of its brakes.
_as_large(quantity) := [judge.worst([size, judge.one_of(judge.of(id, "build.chassis.engine_options.*.brakes_kept"), {true})]) |
	some id in judge.each("build.chassis.engine_options")
	size := judge.limit_max(quantity.value, judge.of(id, quantity.offered))
	size.outcome != "not met"
]
