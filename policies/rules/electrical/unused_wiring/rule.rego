# METADATA
# title: wiring left without a use is sealed or out
# description: >-
#   Each connector of the old engine and of its emission equipment that nothing is
#   plugged into any more is sealed, or taken out with its wire. An open one fills with
#   water: a relay chatters, a fuse blows in the rain, and the fault is sought in the
#   new engine.
# custom:
#   level: should
#   hold: first-start
#   basis: common-practice
#   source: >-
#     common practice: cap, label and tie back, or remove as far as the fuse
#   outcomes:
#   - met
#   - not met
#   - unproven
#   - not applicable
#   remedy: >-
#     cap the connector with its seal, label it and tie it back, or take the wire out as
#     far as its fuse
#   caution: >-
#     disconnect the battery before working on wiring; a short in battery cable starts
#     fires and burns hands
#   reviewed: 2026-11-25
#   since: 0.1.0
#   waivable: true
package rules.electrical.unused_wiring

import data.lib.judge

applies := judge.when_listed("build.electrical.unused")

findings contains judge.one_of(judge.of(id, "build.electrical.unused.*.end"), {"sealed", "removed"}) if {
	some id in judge.each("build.electrical.unused")
}
