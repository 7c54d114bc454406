# METADATA
# title: mount bolts are tightened as far as they should be
# description: >-
#   The torque stretches each bolt to between 50 and 90 per cent of its proof load, whatever
#   the friction. Less and it works loose on the first rough road; more and it has begun to
#   give.
# custom:
#   level: should
#   hold: install
#   basis: common-practice
#   source: >-
#     common practice: 75 per cent of the proof load where bolts are undone again, at most
#     90; T = K·d·F, friction as the builder states it
#   outcomes:
#   - met
#   - not met
#   - unproven
#   - not applicable
#   remedy: >-
#     set the torque for this size, class and lubrication; clean or oil the thread where the
#     friction is too uncertain to say
#   reviewed: 2026-11-25
#   since: 0.1.0
#   waivable: true
package rules.frame.bolts_tight

import data.lib.judge

applies := judge.when_listed("build.frame.bolts")

findings contains judge.within(
	judge.of(id, "figures.fasteners.preload_use.*"),
	"limits.frame.preload_low",
	"limits.frame.preload_high",
) if {
	some id in judge.each("build.frame.bolts")
}
