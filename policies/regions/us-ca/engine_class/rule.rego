# METADATA
# title: an engine of another class than the chassis is accepted
# description: >-
#   Classes are not mixed: a heavy-duty engine is said to be refused in a light-duty
#   chassis, and an industrial or other nonroad engine, or one never certified, in any.
#   That a chassis is too old for the periodic check changes nothing.
# custom:
#   level: note
#   hold: plan
#   basis: second-hand
#   source: >-
#     reference notes on 16 CCR 3362.1 and the engine change guidelines of the Bureau of
#     Automotive Repair; what they say of industrial engines is from memory
#   outcomes:
#   - met
#   - unproven
#   - not applicable
#   remedy: look for a donor certified in the class of the chassis
#   question:
#     ask: >-
#       May an engine of this class, or one never certified for the road, be approved in a
#       chassis of this class?
#     office: California Bureau of Automotive Repair, Smog Check referee
#   reviewed: 2026-11-25
#   since: 0.1.0
#   waivable: true
package regions["us-ca"].engine_class

import data.lib.judge

applies := judge.any_of([
	judge.when("build.engine.certification.class", {"nonroad", "none"}),
	judge.when_differs("build.chassis.certification.class", "build.engine.certification.class"),
])
