# METADATA
# title: rated mounts keep a reserve in the lowest gear
# description: >-
#   At full torque in the lowest gear the pressed engine mount and, at rest, the gearbox
#   mount carry no more than four fifths of their ratings. A mount chosen by the mass of the
#   engine alone shears the first time low range is used in earnest.
# custom:
#   level: should
#   hold: mockup
#   basis: common-practice
#   source: >-
#     common practice: 80 per cent of the mount maker's rating; the loads are statics
#   outcomes:
#   - met
#   - not met
#   - unproven
#   - not applicable
#   remedy: >-
#     choose a mount with a higher rating, or set the engine mounts further apart; write
#     original for mounts the maker of the chassis made for this engine
#   caution: >-
#     a unit that hangs or stands on a jack falls: keep hands out of the gap between mount
#     and bracket
#   reviewed: 2026-11-25
#   since: 0.1.0
#   waivable: true
package rules.frame.mounts_reserve

import data.lib.judge

applies := judge.negate(judge.when("build.frame.mounts.kind", {"original"}))

findings contains judge.about(
	"frame.mounts.engine_rating",
	judge.limit_max("figures.mounts.pressed_use", "limits.frame.mount_use"),
)

findings contains judge.about(
	"frame.mounts.gearbox_rating",
	judge.limit_max("figures.mounts.gearbox_mount_use", "limits.frame.mount_use"),
)
