# METADATA
# title: whether the vehicle is a car or a derivative is settled
# description: >-
#   The regulation on larger engines binds cars and their derivatives, the latter being of
#   the same make as a factory car with the forward part of its body and most of its
#   mechanical parts. Whether a wagon, utility or van falls under it was not found, since
#   the meaning of car was not read. It is asked where the engine is larger than the options
#   with the same brakes.
# related_resources:
# - ref: http://classic.austlii.edu.au/au/legis/wa/consol_reg/rtr2014295/s235.html
#   description: Road Traffic (Vehicles) Regulations 2014, regulation 235
# custom:
#   level: note
#   hold: plan
#   basis: regulation
#   source: >-
#     Road Traffic (Vehicles) Regulations 2014, regulation 235(1) and (2); the definition of
#     car was not read
#   outcomes:
#   - met
#   - unproven
#   - not applicable
#   remedy: ask with make, model and body, and apply for approval where the answer is yes
#   question:
#     ask: >-
#       Is this vehicle a car or a derivative of a car to regulation 235, and is the larger
#       engine approved if it is?
#     office: Western Australia, vehicle licensing (chief executive officer)
#   reviewed: 2026-11-25
#   since: 0.1.0
#   waivable: true
package regions["au-wa"].car_or_derivative

import data.lib.judge

# A list that is left out leaves it open; none offered is none as large.
_known := judge.any_of([
	judge.when_listed("build.chassis.engine_options"),
	judge.negate(judge.when_there("build.chassis.engine_options")),
])

_offered := judge.any_of([condition |
	some id in judge.each("build.chassis.engine_options")
	condition := judge.all_of([
		judge.when(judge.of(id, "build.chassis.engine_options.*.brakes_kept"), {true}),
		judge.when_max("build.engine.displacement", judge.of(id, "build.chassis.engine_options.*.displacement")),
	])
])

applies := judge.all_of([
	judge.when("build.chassis.category", {"off-road-wagon", "light-truck", "van"}),
	_known,
	judge.negate(_offered),
])
