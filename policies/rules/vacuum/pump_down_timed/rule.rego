# METADATA
# title: the pump was timed filling the brake reserve
# description: >-
#   At idle, from nothing, the finished system reaches its vacuum within 15 seconds by
#   the watch. The sum knows no leaks: a hose clamp left loose is found here, or at the
#   second stop in traffic.
# custom:
#   level: should
#   hold: road-test
#   basis: common-practice
#   source: >-
#     common practice: 10 to 15 s at idle
#   needs_basis:
#     road-test: measured
#   outcomes:
#   - met
#   - not met
#   - unproven
#   - not applicable
#   remedy: find the leak with the engine idling, then look at pump speed and reservoir
#   caution: >-
#     brakes are worked on and proved by who is trained for it, where local law asks for
#     it; nobody drives on an unproved brake beyond walking pace on closed ground
#   reviewed: 2026-11-25
#   since: 0.1.0
#   waivable: false
package rules.vacuum.pump_down_timed

import data.lib.judge

applies := judge.when("build.vacuum.source", {"engine-pump", "electric-pump"})

findings contains judge.limit_max("build.vacuum.pump_down", "limits.vacuum.pump_down")
