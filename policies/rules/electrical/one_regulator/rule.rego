# METADATA
# title: one regulator holds the charging voltage
# description: >-
#   An alternator that regulates itself, or that the engine's control unit regulates, is
#   not wired through the regulator of the chassis as well. Two regulators in one
#   circuit boil the battery or leave it flat, and each looks good alone.
# custom:
#   level: should
#   hold: install
#   basis: common-practice
#   source: >-
#     common practice: take the regulator of the chassis out of the circuit of an
#     alternator that has its own
#   outcomes:
#   - met
#   - not met
#   - unproven
#   - not applicable
#   remedy: >-
#     disconnect the regulator of the chassis, join its leads as the alternator's
#     diagram asks, and measure the charging voltage
#   caution: >-
#     disconnect the battery before working on wiring; a short in battery cable starts
#     fires and burns hands
#   reviewed: 2026-11-25
#   since: 0.1.0
#   waivable: true
package rules.electrical.one_regulator

import data.lib.judge

applies := judge.when("build.electrical.alternator.regulator", {"built-in", "control-unit"})

findings contains judge.one_of("build.electrical.alternator.chassis_regulator", {"disconnected", "none"})
