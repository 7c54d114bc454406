# METADATA
# title: the exhaust brake sits near the turbine
# description: >-
#   The exhaust brake sits as near the turbine as it can, so that heat keeps it clean.
#   Further down the pipe soot and condensate seize the butterfly, shut or open.
# custom:
#   level: should
#   hold: mockup
#   basis: common-practice
#   source: >-
#     common practice: as near the turbine as it can, so that heat keeps it clean
#   outcomes:
#   - met
#   - not met
#   - unproven
#   - not applicable
#   remedy: >-
#     move the brake up the downpipe, or straight onto the turbine housing
#   caution: >-
#     let exhaust and charge pipes cool before working on them; run engines where exhaust
#     gas is drawn off
#   reviewed: 2026-11-25
#   since: 0.1.0
#   waivable: true
package rules.exhaust.brake_near_turbine

import data.lib.judge

applies := judge.all_of([
	judge.when_there("build.exhaust.brake"),
	judge.unless("build.engine.fuel", {"petrol", "lpg", "cng", "electric"}),
])

findings contains judge.limit_max("build.exhaust.brake.distance", "limits.exhaust.brake_distance")
