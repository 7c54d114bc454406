# METADATA
# title: the swap is weighed against the exemption from the test
# description: >-
#   Vehicles above forty years are free of the annual test unless they were substantially
#   changed within thirty years. Other displacements of the same basic engine and engines
#   the model was offered with do not count as a change; an engine of another kind does. A
#   swap brings the test back, and with it its limits.
# related_resources:
# - ref: http://mgownersclub.net/features/uk-mot-exemption-40-year-and-older-cars
#   description: the guidance as a club reproduced it, read in part on 2026-11-25
# custom:
#   level: note
#   hold: plan
#   basis: second-hand
#   source: >-
#     British government guidance on substantial change for vehicles of historical
#     interest, as owners' clubs reproduced it in 2018
#   outcomes:
#   - met
#   - unproven
#   - not applicable
#   remedy: >-
#     leave the declaration for the exemption until the answer is there, and have the
#     vehicle tested meanwhile
#   question:
#     ask: >-
#       Is this engine an alternative of the same basic engine or one the model was
#       offered with, or is the vehicle substantially changed and due for the annual test?
#     office: Driver and Vehicle Standards Agency
#   reviewed: 2026-11-25
#   since: 0.1.0
#   waivable: true
package regions.gb.historic_test

import data.lib.judge

applies := judge.all_of([
	judge.when_min("figures.approval.age_since_registered", "limits.gb.historic_age"),
	judge.when_differs("build.outgoing_engine.family", "build.engine.family"),
])
