# METADATA
# title: each gauge has the sender it was made for
# description: >-
#   Every gauge is matched to its sender: range and resistance belong together. A petrol
#   cluster on the senders of a diesel shows half the oil pressure, or all is well until the
#   bearings go.
# custom:
#   level: should
#   hold: first-start
#   basis: common-practice
#   source: >-
#     common practice: sender and gauge of one set; compared once with a mechanical gauge
#   outcomes:
#   - met
#   - not met
#   - unproven
#   - not applicable
#   remedy: >-
#     fit the sender that belongs to the gauge, or a gauge of its own, and compare it once
#     with a mechanical one
#   reviewed: 2026-11-25
#   since: 0.1.0
#   waivable: true
package rules.controls.gauges_matched

import data.lib.judge

applies := judge.when_listed("build.controls.gauges")

findings contains judge.one_of(judge.of(id, "build.controls.gauges.*.matched"), {true}) if {
	some id in judge.each("build.controls.gauges")
}
