# METADATA
# title: no joint binds at full droop
# description: >-
#   With the axle hanging, the joint at the gearbox or transfer case bends less than the
#   angle at which it binds. A yoke that touches its neighbour spreads, and the shaft leaves
#   on the next crest.
# custom:
#   level: should
#   hold: install
#   basis: manufacturer
#   source: >-
#     angle at which the joint binds, by its maker or on the bench; the pinion taken to move
#     straight down
#   outcomes:
#   - met
#   - not met
#   - unproven
#   - not applicable
#   remedy: >-
#     limit the droop with straps, cut yokes by their maker's leave only, or use a joint
#     that bends further
#   reviewed: 2026-11-25
#   since: 0.1.0
#   waivable: true
package rules.shafts.droop

import data.lib.judge

applies := judge.when_listed("build.shafts")

_finding(id) := judge.unasked(drives) if {
	drives := judge.of(id, "build.shafts.*.drives")
	judge.holds(drives, "centre-bearing")
} else := judge.limit_max(judge.of(id, "figures.shafts.angle_droop_use.*"), "limits.shafts.droop")

findings contains _finding(id) if some id in judge.each("build.shafts")
