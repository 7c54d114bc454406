# METADATA
# title: booster and reservoir hold two stops in reserve
# description: >-
#   With the engine stalled the vacuum that is left still assists two full stops, counted at
#   the pedal or computed from booster and reservoir. A diesel that stalls on a descent
#   leaves a vehicle heavier than before with a pedal like a wall.
# custom:
#   level: should
#   hold: road-test
#   basis: common-practice
#   source: >-
#     common practice: two to three assisted stops after the engine stopped; Boyle's law
#   outcomes:
#   - met
#   - not met
#   - unproven
#   - not applicable
#   remedy: >-
#     count the full strokes that are assisted after the engine was stopped; where they are
#     too few, look at the check valve, then fit a reservoir before the booster, or a larger
#     one
#   caution: >-
#     brakes are worked on and proved by who is trained for it, where local law asks for
#     it; nobody drives on an unproved brake beyond walking pace on closed ground
#   reviewed: 2026-11-25
#   since: 0.1.0
#   waivable: false
package rules.brakes.reserve_stops

import data.lib.judge

applies := judge.when("build.hydraulics.brakes.assist", {"vacuum"})

# What was counted needs neither the volume of the booster nor the least vacuum
# it works with, which its maker seldom prints.
findings contains judge.limit_min("build.vacuum.stops_counted", "limits.brakes.reserve_stops") if _counted

findings contains judge.about(
	"vacuum.volume",
	judge.limit_min("figures.hydraulics.reserve_stops", "limits.brakes.reserve_stops"),
) if {
	not _counted
}

_counted if judge.present_at("build.vacuum.stops_counted", "plan").outcome == "met"
