# METADATA
# title: a mount that torque lifts can not let go
# description: >-
#   Where full torque in the lowest gear pulls an engine mount apart, metal holds the engine
#   should its rubber part. Otherwise the engine rolls into the throttle linkage and holds
#   it open.
# custom:
#   level: should
#   hold: mockup
#   basis: physics
#   source: >-
#     statics of the couple on the mounts; rubber bonded to metal is made to be pressed or
#     sheared
#   outcomes:
#   - met
#   - not met
#   - unproven
#   - not applicable
#   remedy: >-
#     fit interlocking mounts, a chain or a torque stay; or set the engine mounts further
#     apart
#   caution: >-
#     a throttle pulled open by a rolling engine does not close: prove the stop before the
#     first start
#   reviewed: 2026-11-25
#   since: 0.1.0
#   waivable: true
package rules.frame.mounts_captive

import data.lib.judge

applies := judge.negate(judge.when("build.frame.mounts.kind", {"original"}))

findings contains judge.one_of("build.frame.mounts.captive", {true}) if {
	judge.holds("build.frame.mounts.captive", true)
}

findings contains judge.about(
	"frame.mounts.spread",
	judge.limit_min("figures.mounts.lifted_load", "limits.frame.lifted"),
) if {
	not judge.holds("build.frame.mounts.captive", true)
}
