# METADATA
# title: a vacuum brake on a diesel has a pump
# description: >-
#   A diesel has no throttle and makes no vacuum in its manifold: a brake assisted by vacuum
#   gets it from a pump on the engine or from an electric one. Without it the pedal goes
#   hard at the first stop.
# custom:
#   level: must
#   hold: install
#   basis: physics
#   source: >-
#     a diesel without a throttle plate draws no vacuum in its manifold
#   outcomes:
#   - met
#   - not met
#   - unproven
#   - not applicable
#   remedy: >-
#     fit a vacuum pump on the engine or an electric one, with reservoir and check valve, or
#     change to hydraulic assist
#   caution: >-
#     brakes are worked on and proved by who is trained for it, where local law asks for it;
#     nobody drives on an unproved brake beyond walking pace on closed ground
#   reviewed: 2026-11-25
#   since: 0.1.0
#   waivable: false
package rules.vacuum.source_for_assist

import data.lib.judge

applies := judge.all_of([
	judge.when("build.engine.fuel", {"diesel"}),
	judge.when("build.hydraulics.brakes.assist", {"vacuum"}),
])

findings contains judge.one_of("build.vacuum.source", {"engine-pump", "electric-pump"})
