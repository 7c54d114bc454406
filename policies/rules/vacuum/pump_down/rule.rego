# METADATA
# title: the pump fills the brake reserve quickly
# description: >-
#   From nothing the pump reaches its vacuum within 15 seconds of idling, by its swept
#   volume; where it was timed that counts. A slow pump is found after the second stop in
#   traffic.
# custom:
#   level: should
#   hold: first-start
#   basis: common-practice
#   source: >-
#     common practice: 10 to 15 s; tight vessel, constant pump speed
#   outcomes:
#   - met
#   - not met
#   - unproven
#   - not applicable
#   remedy: >-
#     fit a larger pump, or take the reservoir no larger than the booster needs
#   caution: >-
#     brakes are worked on and proved by who is trained for it, where local law asks for it;
#     nobody drives on an unproved brake beyond walking pace on closed ground
#   reviewed: 2026-11-25
#   since: 0.1.0
#   waivable: false
package rules.vacuum.pump_down

import data.lib.judge

applies := judge.when("build.vacuum.source", {"engine-pump", "electric-pump"})

findings contains _filled

# What was timed counts, in vacuum/pump_down_timed.
_filled := judge.unasked(timed) if {
	timed := judge.ref("build.vacuum.pump_down")
	count(judge.lacks(timed)) == 0
} else := judge.about(
	"vacuum.pump_speed",
	judge.limit_max("figures.hydraulics.pump_down_time", "limits.vacuum.pump_down"),
)
