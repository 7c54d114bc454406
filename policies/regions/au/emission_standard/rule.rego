# METADATA
# title: an engine older or of an earlier stage is accepted
# description: >-
#   The finished vehicle keeps to the design rules of its own date of manufacture, so an
#   engine older than the chassis, or certified to an earlier stage, has to be shown to meet
#   them; a pump, marine or field engine may be newer and still fall short. Without evidence
#   a laboratory test is said to be asked, which can cost more than the engine.
# related_resources:
# - ref: https://www.scribd.com/document/718909935/PTVH5189-STU-02895-Vehicle-Standards-Information-8-v10-WEB-FA-1
#   description: Vehicle Standards Information 8, October 2021, copy
# custom:
#   level: note
#   hold: plan
#   basis: memory
#   source: >-
#     that a registered vehicle must go on complying is read in Vehicle Standards
#     Information 8 of Victoria; that the engine must be of the same or a later standard,
#     and the test, are from memory
#   outcomes:
#   - met
#   - unproven
#   - not applicable
#   remedy: look for a donor as new as the chassis and take over its own emission equipment
#   question:
#     ask: >-
#       Which design rule for exhaust emissions binds this vehicle by its build date, and
#       which evidence or test shows that this engine meets it?
#     office: registration authority of the state, and the engineer it recognises
#   reviewed: 2026-11-25
#   since: 0.1.0
#   waivable: true
package regions.au.emission_standard

import data.lib.judge

applies := judge.all_of([
	judge.when_differs("build.outgoing_engine.family", "build.engine.family"),
	judge.any_of([
		judge.negate(judge.when_min("build.engine.model_year", "build.chassis.model_year")),
		judge.negate(judge.when_min("build.engine.emission_stage", "build.chassis.emission_stage")),
	]),
])
