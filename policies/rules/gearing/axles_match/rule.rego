# METADATA
# title: front and rear axle have the same ratio
# description: >-
#   The ratios of two driven axles differ by 1 per cent at most. With front drive locked in,
#   a larger difference winds shafts and transfer case up against each other until a tyre
#   slips or a gear breaks; new gears in one axle only are the usual way there.
# custom:
#   level: should
#   hold: plan
#   basis: common-practice
#   source: >-
#     common practice: makers themselves pair ratios that part by less than 1 per cent, such
#     as 4.10 and 4.09; that locked shafts want one ratio is physics
#   outcomes:
#   - met
#   - not met
#   - unproven
#   - not applicable
#   remedy: >-
#     bring both axles to one ratio, with the same size of tyre all round, before front
#     drive is engaged on a hard road
#   reviewed: 2026-11-25
#   since: 0.1.0
#   waivable: true
package rules.gearing.axles_match

import data.lib.judge

applies := judge.all_of([
	judge.when_there("build.transfer_case"),
	judge.when_there("build.axles.front.ratio"),
])

findings contains judge.about(
	"axles.front.ratio",
	judge.limit_max("figures.gearing.axle_mismatch", "limits.gearing.axle_mismatch"),
)
