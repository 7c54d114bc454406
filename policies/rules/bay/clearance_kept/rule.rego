# METADATA
# title: each gap keeps what it needs
# description: >-
#   With engine and neighbour moved together, each gap keeps what the builder set for it:
#   half an inch above the axle, an inch between fan and core. Rubber settles, mounts age,
#   and a gap that just clears when new knocks within a year.
# custom:
#   level: should
#   hold: mockup
#   basis: common-practice
#   source: >-
#     common practice; what each gap needs is the builder's own word
#   outcomes:
#   - met
#   - not met
#   - unproven
#   - not applicable
#   remedy: >-
#     move the engine, change sump, fan or bump stops, or use stiffer mounts, before the
#     mounts are welded
#   reviewed: 2026-11-25
#   since: 0.1.0
#   waivable: true
package rules.bay.clearance_kept

import data.lib.judge

applies := judge.when_listed("build.bay.clearances")

findings contains judge.limit_min(judge.of(id, "figures.bell.clearance_margin.*"), "limits.bay.margin") if {
	some id in judge.each("build.bay.clearances")
}
