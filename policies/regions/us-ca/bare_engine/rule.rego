# METADATA
# title: a bare engine takes the equipment of the vehicle
# description: >-
#   All emission equipment of the donor, what belongs to the chassis included, has to come
#   along; a bare engine is said to receive the equipment of the vehicle it goes into.
# custom:
#   level: note
#   hold: plan
#   basis: second-hand
#   source: >-
#     reference notes on the engine change guidelines of the Bureau of Automotive Repair;
#     the text was not read
#   outcomes:
#   - met
#   - unproven
#   - not applicable
#   remedy: list what the vehicle was made with, and what of it the engine can take
#   question:
#     ask: >-
#       Which emission equipment of the original vehicle must be on an engine that has none
#       of its own?
#     office: California Bureau of Automotive Repair, Smog Check referee
#   reviewed: 2026-11-25
#   since: 0.1.0
#   waivable: true
package regions["us-ca"].bare_engine

import data.lib.judge

applies := judge.all_of([
	judge.negate(judge.when_listed("build.engine.emission_equipment")),
	judge.when_listed("build.chassis.emission_equipment"),
])
