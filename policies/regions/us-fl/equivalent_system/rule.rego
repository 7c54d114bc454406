# METADATA
# title: the changed emission controls count as equivalent
# description: >-
#   Taking off or disabling an emission control that the maker installed is tampering,
#   unless it is replaced by one equivalent in design and function. Florida is said to
#   inspect nothing periodically, so that nobody notices until the vehicle is sold, and
#   then the title can not lawfully pass.
# related_resources:
# - ref: https://lawserver.com/law/state/florida/regulations/florida_statutes_316-2935
#   description: Florida Statutes 316.2935, current as of 2024
# custom:
#   level: note
#   hold: plan
#   basis: statute
#   source: >-
#     Florida Statutes 316.2935(1)(a), current as of 2024; that no periodic inspection
#     is due is second-hand. The certificate quoted elsewhere speaks of vehicles of 1975
#     and later up to 10,000 lb, which is not applied here
#   outcomes:
#   - met
#   - unproven
#   - not applicable
#   remedy: >-
#     keep the donor's emission controls whole, list them against those of the chassis,
#     and ask before the old ones are scrapped
#   question:
#     ask: >-
#       Are the emission controls of this engine equivalent in design and function to
#       those the maker installed on this chassis?
#     office: Florida Department of Environmental Protection
#   reviewed: 2026-11-25
#   since: 0.1.0
#   waivable: true
package regions["us-fl"].equivalent_system

import data.lib.judge

applies := judge.all_of([
	judge.when_listed("build.chassis.emission_equipment"),
	judge.when_differs("build.outgoing_engine.family", "build.engine.family"),
])
