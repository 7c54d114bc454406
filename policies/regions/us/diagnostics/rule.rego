# METADATA
# title: the loss of on-board diagnostics is accepted
# description: >-
#   On-board diagnostics are an element of emission design, and the discretion of the 2020
#   tampering policy is said to stop short of them. A mechanical engine in such a chassis
#   leaves nothing for them to watch.
# custom:
#   level: note
#   hold: plan
#   basis: second-hand
#   source: >-
#     reference notes on the tampering policy of the US Environmental Protection Agency of
#     23 November 2020 and on 40 CFR 86.005-17; the policy was not read
#   outcomes:
#   - met
#   - unproven
#   - not applicable
#   remedy: >-
#     choose a donor whose own diagnostics come with it, or keep the chassis and its engine
#   question:
#     ask: >-
#       May a chassis sold with on-board diagnostics be finished without them, and on what
#       documented basis?
#     office: US Environmental Protection Agency, vehicle and engine compliance
#   reviewed: 2026-11-25
#   since: 0.1.0
#   waivable: true
package regions.us.diagnostics

import data.lib.judge

applies := judge.all_of([
	judge.when_min("build.chassis.model_year", "limits.us.first_standard_year"),
	judge.when("build.chassis.certification.diagnostics", {true}),
	judge.negate(judge.when("build.engine.diagnostics", {true})),
])
