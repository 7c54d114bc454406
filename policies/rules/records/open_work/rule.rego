# METADATA
# title: work due by this hold point is done
# description: >-
#   Every item of work is done by the hold point it names. What is welded, routed or torqued
#   "later" is found by the inspector, or by the road.
# custom:
#   level: must
#   hold: plan
#   basis: own-record
#   source: the build's own list of work and the hold point each item names
#   outcomes:
#   - met
#   - not met
#   - unproven
#   - not applicable
#   remedy: >-
#     do the work and write the day into the manifest, or name the later hold point that it
#     really belongs to
#   reviewed: 2026-11-25
#   since: 0.1.0
#   waivable: true
package rules.records.open_work

import data.lib.judge

applies := judge.when_listed("build.work")

findings contains judge.closed_by(
	judge.of(id, "build.work.*.done"),
	judge.of(id, "build.work.*.close_by"),
) if {
	some id in judge.each("build.work")
}
