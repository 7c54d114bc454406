# METADATA
# title: the statement of the seller can be signed
# description: >-
#   Whoever sells, leases or transfers the title of a vehicle certifies in writing that
#   its emission controls have not been tampered with. A builder who hands over a
#   vehicle in his own name signs for the engine change.
# related_resources:
# - ref: https://lawserver.com/law/state/florida/regulations/florida_statutes_316-2935
#   description: Florida Statutes 316.2935, current as of 2024
# custom:
#   level: note
#   hold: handover
#   basis: statute
#   source: >-
#     Florida Statutes 316.2935(1)(a) and (b), current as of 2024; the wording of the
#     certificate was not read
#   outcomes:
#   - met
#   - unproven
#   - not applicable
#   remedy: >-
#     settle the equivalence of the emission controls first, and keep the answer with
#     the title
#   question:
#     ask: >-
#       Does the title pass at handover, and in which words can the statement on
#       emission controls be signed for this engine change?
#     office: Florida Department of Highway Safety and Motor Vehicles
#   reviewed: 2026-11-25
#   since: 0.1.0
#   waivable: true
package regions["us-fl"].seller_statement

import data.lib.judge

applies := judge.all_of([
	judge.when_listed("build.chassis.emission_equipment"),
	judge.when_differs("build.outgoing_engine.family", "build.engine.family"),
	judge.when("build.registration.installer", {"shop"}),
])
