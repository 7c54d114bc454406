# METADATA
# title: the smoke limits in force are known
# description: >-
#   The state proposed in November 2022 to update its program for heavy diesels. Whether
#   that was adopted, with lower limits or other tests, was not found, and an old pump
#   engine bought to the old table could fail the new one.
# related_resources:
# - ref: https://govt.westlaw.com/nyreg/Document/I51f7036869a011edafeba31a7423f8ed?viewType=FullText&originationContext=documenttoc&transitionType=CategoryPageItem&contextData=(sc.Default)
#   description: proposal of 23 November 2022 in the State Register
# custom:
#   level: note
#   hold: plan
#   basis: second-hand
#   source: >-
#     notice ENV-47-22-00005-P of 23 November 2022, of which the purpose was read; its
#     text and outcome were not
#   outcomes:
#   - met
#   - unproven
#   - not applicable
#   remedy: ask which table applies to the engine year before buying the engine
#   question:
#     ask: >-
#       Which opacity limit and which inspection of the emission equipment apply today
#       to a diesel of this gross rating and engine year?
#     office: New York State Department of Environmental Conservation, mobile sources
#   reviewed: 2026-11-25
#   since: 0.1.0
#   waivable: true
package regions["us-ny"].opacity_amended

import data.lib.judge

applies := judge.all_of([
	judge.when("build.engine.fuel", {"diesel"}),
	judge.negate(judge.when_max("build.chassis.ratings.gross", "limits.us_ny.heavy_gross")),
])
