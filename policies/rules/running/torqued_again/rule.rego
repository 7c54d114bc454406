# METADATA
# title: mounts and shafts were torqued again after the drive
# description: >-
#   After the road test the bolts of mounts, adapter, shafts and wheels were torqued
#   once more, as the list says. New joints settle in the first hour: a flange bolt that
#   works loose lets a shaft go at speed.
# custom:
#   level: should
#   hold: inspection
#   basis: common-practice
#   source: >-
#     common practice: re-torque after the first 50 to 100 km, and again at the first
#     service
#   outcomes:
#   - met
#   - not met
#   - unproven
#   reasons:
#     order: it was torqued before the drive, so what settled on the road was not found
#     future: the day lies ahead, so nothing has been torqued yet
#   remedy: >-
#     list the joints with their torques, torque them again after the drive, and write
#     down the day
#   caution: >-
#     hold the vehicle on stands, wheels chocked, and let exhaust and shafts cool before
#     going under
#   reviewed: 2026-11-25
#   since: 0.1.0
#   waivable: true
package rules.running.torqued_again

import data.lib.judge

findings contains judge.dated_at("build.road_test.driven", "inspection")

findings contains judge.present_at("build.road_test.rechecks", "inspection")

findings contains judge.about(
	judge.of(id, "build.road_test.rechecks.*.done").subject,
	judge.not_after("build.road_test.driven", judge.of(id, "build.road_test.rechecks.*.done"), "inspection"),
) if {
	some id in judge.each("build.road_test.rechecks")
}

findings contains judge.dated_at(judge.of(id, "build.road_test.rechecks.*.done"), "inspection") if {
	some id in judge.each("build.road_test.rechecks")
}
