# METADATA
# title: two springs bring the throttle back to idle
# description: >-
#   Two springs, each enough alone, pull the throttle back to idle. With one, a broken
#   spring leaves the engine where the foot last was. A pedal with a sensor has its
#   springs inside, and nothing pulls at the engine.
# custom:
#   level: should
#   hold: first-start
#   basis: common-practice
#   source: >-
#     common practice: two springs, each enough alone; rules on accelerator controls ask the
#     same in places, and those of a region say so where it is registered
#   outcomes:
#   - met
#   - not met
#   - unproven
#   - not applicable
#   remedy: >-
#     fit a second spring that acts on the lever itself, not on the cable
#   caution: >-
#     try the return by hand, engine off, at full throttle, before every first start of a
#     new linkage
#   reviewed: 2026-11-25
#   since: 0.1.0
#   waivable: true
package rules.controls.return_springs

import data.lib.judge

applies := judge.unless("build.controls.pedal", {"sensor"})

findings contains judge.limit_min("build.controls.return_springs", "limits.controls.return_springs")
