# METADATA
# title: the gaps where engines touch are among those measured
# description: >-
#   The bonnet and, over a driven front axle, its housing are the two places where a
#   swapped engine touches most often: the first dents at the first pothole, the second
#   knocks a hole into the sump. A list of clearances without them proves little.
# custom:
#   level: should
#   hold: mockup
#   basis: common-practice
#   source: >-
#     common practice: plasticine on the rocker cover and the bonnet closed, the front axle
#     jacked to its bump stops under the sump
#   outcomes:
#   - met
#   - not met
#   - unproven
#   remedy: >-
#     press plasticine onto the highest points and close the bonnet; take the bump stops
#     out, lift the axle and measure under the sump; then list both clearances
#   caution: >-
#     put the frame on stands before the springs are unloaded, and never lie under an axle
#     held by a jack
#   reviewed: 2026-11-27
#   since: 0.1.0
#   waivable: true
package rules.bay.gaps_measured

import data.lib.judge

findings contains judge.about(
	"bay.clearances.bonnet",
	judge.lists("build.bay.clearances.*.between", "bonnet"),
)

findings contains judge.about(
	"bay.clearances.sump-and-axle",
	judge.lists("build.bay.clearances.*.between", "sump-and-axle"),
) if {
	not judge.is_none("build.axles.front.ratio")
}
