# METADATA
# title: the state has said what it requires of the swap
# description: >-
#   An engine of greater capacity than the one the vehicle was supplied with needs a
#   statement of requirements before it is installed; mass, power and torque against the
#   brakes, strength, steering, suspension and handling are weighed. An engine that is no
#   larger but stronger than any option is asked about as well, since the regulation on cars
#   names power and torque. The engine that comes out is taken as the original one.
# related_resources:
# - ref: https://www.sa.gov.au/topics/driving-and-transport/vehicles/vehicle-standards-and-modifications/engine-and-exhaust-modifications
#   description: South Australia on engine and exhaust modifications
# - ref: https://vdocuments.site/light-vehicle-modification-sagovau-a-report-from-a-light-vehicle-engineering.html
#   description: fact sheet on light vehicle modification, copy
# - ref: http://www.austlii.edu.au/au/legis/sa/consol_reg/rtr1999355/s25.html
#   description: regulation 25 of 1999
# custom:
#   level: note
#   hold: plan
#   basis: agency-guidance
#   source: >-
#     page of the state on engine and exhaust modifications, read; the trigger by power and
#     torque rests on regulation 25 of 1999, an older text
#   outcomes:
#   - met
#   - unproven
#   - not applicable
#   remedy: >-
#     hand in form MR620 with the data of both engines, and buy when the answer is there
#   question:
#     ask: >-
#       Which requirements does the statement set for this engine, and is a report of an
#       engineering signatory among them?
#     office: South Australia, Vehicle Standards
#   reviewed: 2026-11-25
#   since: 0.1.0
#   waivable: true
package regions["au-sa"].statement_of_requirements

import data.lib.judge

# A list that is left out leaves it open; none offered is none as strong.
_known := judge.any_of([
	judge.when_listed("build.chassis.engine_options"),
	judge.negate(judge.when_there("build.chassis.engine_options")),
])

# Some option with the brakes of this vehicle has at least as much.
_offered(value, offered) := judge.any_of([condition |
	some id in judge.each("build.chassis.engine_options")
	condition := judge.all_of([
		judge.when(judge.of(id, "build.chassis.engine_options.*.brakes_kept"), {true}),
		judge.when_max(value, judge.of(id, offered)),
	])
])

applies := judge.any_of([
	judge.negate(judge.when_max("build.engine.displacement", "build.outgoing_engine.displacement")),
	judge.all_of([
		judge.negate(judge.when("build.chassis.category", {"truck"})),
		_known,
		judge.any_of([
			judge.negate(_offered("build.engine.rated_power", "build.chassis.engine_options.*.rated_power")),
			judge.negate(_offered("build.engine.peak_torque", "build.chassis.engine_options.*.peak_torque")),
		]),
	]),
])
