# METADATA
# title: the exhaust is no louder than the vehicle was
# description: >-
#   The exhaust may not be altered so that it is louder than it was; in Germany louder
#   exhaust alone ends the operating permit. The stationary level recorded for the model
#   stands for what the vehicle was; drive-by levels are a matter of the approval.
# related_resources:
# - ref: http://legislation.data.gov.uk/uksi/1986/1078/part/II/chapter/K/1995-02-01?wrap=true
#   description: Construction and Use Regulations 1986, reg. 54, read on 2026-11-25
# - ref: https://github.com/bundestag/gesetze/blob/master/s/stvzo_2012/index.md
#   description: StVZO section 19, copy of the consolidated text, read on 2026-11-25
# - ref: https://spvm.qc.ca/FR/Fiches/Details/Vehicule-modifie
#   description: Montreal police, modified vehicles
# custom:
#   level: should
#   hold: inspection
#   basis: regulation
#   source: >-
#     Great Britain: Road Vehicles (Construction and Use) Regulations 1986, reg. 54(2), as
#     in force on 1 February 1995; Germany: StVZO section 19(2) sentence 2 no. 3; Quebec:
#     page of the Montreal police on modified vehicles. None of them says by which level
#     louder is shown
#   needs_basis:
#     inspection: documented with evidence
#   outcomes:
#   - met
#   - not met
#   - unproven
#   - not applicable
#   remedy: >-
#     keep the silencers of the chassis, or fit ones made for the new engine and have the
#     level taken before the inspection
#   reviewed: 2026-11-25
#   since: 0.1.0
#   waivable: true
package rules.emissions.no_louder

import data.lib.judge

applies := judge.all_of([
	judge.in_region({"GB", "DE", "CA-QC"}),
	judge.negate(judge.when("build.engine.fuel", {"electric"})),
	judge.when_there("build.engine.noise_reference"),
])

findings contains judge.limit_max("build.engine.noise", "build.engine.noise_reference")
