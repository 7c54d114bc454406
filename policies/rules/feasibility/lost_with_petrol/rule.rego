# METADATA
# title: what leaves with a petrol engine is replaced
# description: >-
#   Manifold vacuum and ignition pulses leave with the petrol engine. A plan that counts on
#   the vehicle for brake vacuum or for the signal of its tachometer has forgotten a pump,
#   or a pick-up at the flywheel or alternator.
# custom:
#   level: should
#   hold: plan
#   basis: physics
#   source: >-
#     a diesel without a throttle plate draws no vacuum in its manifold, and it has no
#     ignition
#   outcomes:
#   - met
#   - not met
#   - unproven
#   - not applicable
#   remedy: >-
#     plan an engine-driven or electric vacuum pump, or hydraulic assist, and a speed signal
#     from alternator, flywheel or injection pump
#   caution: >-
#     without vacuum a brake servo gives one or two stops and then none: prove brake and
#     reserve at walking pace
#   reviewed: 2026-11-25
#   since: 0.1.0
#   waivable: true
package rules.feasibility.lost_with_petrol

import data.lib.judge

applies := judge.all_of([
	judge.when("build.outgoing_engine.fuel", {"petrol"}),
	judge.when("build.engine.fuel", {"diesel"}),
])

findings contains judge.one_of(need, {"donor", "bought", "made", "not-needed"}) if some need in _lost

_lost := {"build.chassis.brings.brake_vacuum", "build.chassis.brings.engine_speed_signal"}
