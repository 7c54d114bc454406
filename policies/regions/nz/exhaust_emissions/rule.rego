# METADATA
# title: the modifier leaves the vehicle within its emission rule
# description: >-
#   The rule on exhaust emissions has duties of those who modify a vehicle, and a visible
#   smoke check. An engine older than the vehicle, or of an earlier stage, may put it
#   outside what applied to it. Vehicles made before 1 January 1990 are excepted from some
#   of the rule, not from all of it.
# related_resources:
# - ref: http://www.nzta.govt.nz/resources/rules/vehicle-exhaust-emissions-2007.html
#   description: rule 33001/2
# custom:
#   level: note
#   hold: plan
#   basis: memory
#   source: >-
#     contents and objective of rule 33001/2, read; the wording of its section 5 was not
#     read and is from memory
#   outcomes:
#   - met
#   - unproven
#   - not applicable
#   remedy: look for a donor as new as the vehicle, with its own emission equipment
#   question:
#     ask: >-
#       Which emission requirement of rule 33001 binds this vehicle after the engine change,
#       and what shows that this engine meets it?
#     office: NZ Transport Agency, or the low volume vehicle certifier
#   reviewed: 2026-11-25
#   since: 0.1.0
#   waivable: true
package regions.nz.exhaust_emissions

import data.lib.judge

applies := judge.all_of([
	judge.when_differs("build.outgoing_engine.family", "build.engine.family"),
	judge.any_of([
		judge.negate(judge.when_min("build.engine.model_year", "build.chassis.model_year")),
		judge.negate(judge.when_min("build.engine.emission_stage", "build.chassis.emission_stage")),
	]),
])
