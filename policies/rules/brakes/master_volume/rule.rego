# METADATA
# title: the brake master cylinder keeps stroke in reserve
# description: >-
#   All wheel cylinders together take no more than four fifths of what the master
#   cylinder displaces. Larger calipers on the old master let the pedal sink to the
#   floor when the pads are worn and the fluid is hot.
# custom:
#   level: should
#   hold: install
#   basis: common-practice
#   source: >-
#     common practice: a fifth of the stroke left; master and wheel cylinders displace
#     the same volume
#   outcomes:
#   - met
#   - not met
#   - unproven
#   - not applicable
#   remedy: fit a master cylinder of larger bore, and look at the pedal force again
#   caution: >-
#     brakes are worked on and proved by who is trained for it, where local law asks for
#     it; nobody drives on an unproved brake beyond walking pace on closed ground
#   reviewed: 2026-11-25
#   since: 0.1.0
#   waivable: false
package rules.brakes.master_volume

import data.lib.judge

applies := judge.when_listed("build.hydraulics.brakes.cylinders")

findings contains judge.about(
	"hydraulics.brakes.master_stroke",
	judge.limit_max("figures.hydraulics.brake_volume_use", "limits.brakes.master_volume"),
)
