# METADATA
# title: rated mounts carry what rests on them
# description: >-
#   At rest each engine mount and the gearbox mount carry no more than the maker of the
#   mount allows. A diesel with its gearbox weighs half as much again as what was there; on
#   mounts bought for the old engine it settles on the cross-member within a season.
# custom:
#   level: should
#   hold: mockup
#   basis: manufacturer
#   source: >-
#     the mount maker's rating; the loads are moments about the mounts (statics). What
#     torque adds is judged by frame/mounts_captive, because ratings are for loads at rest
#   outcomes:
#   - met
#   - not met
#   - unproven
#   - not applicable
#   remedy: >-
#     choose mounts with a higher rating, or move the one that carries too much away from
#     the balance point; write original for mounts the maker of the chassis made for this
#     engine
#   caution: >-
#     a unit that hangs or stands on a jack falls: keep hands out of the gap between mount
#     and bracket
#   reviewed: 2026-11-25
#   since: 0.1.0
#   waivable: true
package rules.frame.mounts_bear

import data.lib.judge

applies := judge.negate(judge.when("build.frame.mounts.kind", {"original"}))

findings contains judge.about(
	"frame.mounts.engine_rating",
	judge.limit_max("figures.mounts.engine_mount_load", "build.frame.mounts.engine_rating"),
)

findings contains judge.about(
	"frame.mounts.gearbox_rating",
	judge.limit_max("figures.mounts.gearbox_mount_load", "build.frame.mounts.gearbox_rating"),
)
