# METADATA
# title: on-board diagnostics answer at the check
# description: >-
#   In the check a vehicle with on-board diagnostics fails where they do not communicate. A
#   mechanical engine in a chassis that was sold with them can not pass it.
# related_resources:
# - ref: https://www.law.cornell.edu/regulations/california/16-CCR-3340.42.2
#   description: 16 CCR 3340.42.2
# - ref: https://govt.westlaw.com/calregs/Document/I1593F4014C8211EC89E5000D3A7C4BC3?viewType=FullText&originationContext=documenttoc&transitionType=CategoryPageItem&contextData=(sc.Default)
#   description: 16 CCR 3340.5, official text of the California Code of Regulations
# custom:
#   level: must
#   hold: inspection
#   basis: regulation
#   source: >-
#     16 CCR 3340.42.2(c)(6); scope of the check by 16 CCR 3340.5 and Health and Safety
#     Code 44011(a)(3). A chassis sold with diagnostics is taken as equipped with them
#   needs_basis:
#     inspection: documented with evidence
#   outcomes:
#   - met
#   - not met
#   - unproven
#   - not applicable
#   remedy: >-
#     choose a donor whose own diagnostics come with it; ask the referee before anything
#     else
#   reviewed: 2026-11-25
#   since: 0.1.0
#   waivable: true
package regions["us-ca"].diagnostics

import data.lib.judge

applies := judge.all_of([
	judge.when("build.chassis.certification.diagnostics", {true}),
	judge.any_of([
		judge.when("build.engine.fuel", {"petrol", "lpg", "cng"}),
		judge.all_of([
			judge.when("build.engine.fuel", {"diesel"}),
			judge.when_min("build.chassis.model_year", "limits.us_ca.diesel_smog_check_year"),
			judge.when_max("build.chassis.ratings.gross", "limits.us_ca.referee_gross"),
		]),
	]),
])

findings contains judge.one_of("build.engine.diagnostics", {true})
