# METADATA
# title: an engine not certified for California is accepted
# description: >-
#   A chassis first certified for California is said to need an engine certified for
#   California; a federal one is refused.
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
#   remedy: look for a donor whose label names California
#   question:
#     ask: >-
#       May an engine whose label does not name California be approved in a chassis
#       certified for California?
#     office: California Bureau of Automotive Repair, Smog Check referee
#   reviewed: 2026-11-25
#   since: 0.1.0
#   waivable: true
package regions["us-ca"].certified_for

import data.lib.judge

applies := judge.all_of([
	judge.when("build.chassis.certification.certified_for", {"california", "both"}),
	judge.negate(judge.when("build.engine.certification.certified_for", {"california", "both"})),
])
