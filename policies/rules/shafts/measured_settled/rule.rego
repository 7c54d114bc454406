# METADATA
# title: joint angles were read with the springs settled
# description: >-
#   The slopes of each shaft were read with the vehicle on its wheels and the springs
#   settled, and again once the engine was set for good. Read on stands, with the axle
#   hanging, they say nothing of the road, and the mounts get welded to them.
# custom:
#   level: must
#   hold: install
#   basis: own-record
#   source: >-
#     the build's own record; that only settled springs give the angles of the road is in
#     the installation manuals of driveline makers
#   outcomes:
#   - met
#   - not met
#   - unproven
#   - not applicable
#   reasons:
#     before-engine: the slopes were read before the engine was set for good
#   remedy: >-
#     put the vehicle on its wheels with its usual load, roll it to and fro until the
#     springs settle, and read the slopes again
#   caution: >-
#     chock the wheels before going under; a vehicle on its wheels over a pit or on ramps,
#     never on a jack alone
#   reviewed: 2026-11-25
#   since: 0.1.0
#   waivable: true
package rules.shafts.measured_settled

import data.lib.judge

applies := judge.when_listed("build.shafts")

findings contains judge.one_of(judge.of(id, "build.shafts.*.standing"), {"settled"}) if {
	some id in judge.each("build.shafts")
}

findings contains judge.about(
	judge.of(id, "build.shafts.*.measured").subject,
	judge.because("before-engine", judge.not_after("build.engine.date", judge.of(id, "build.shafts.*.measured"), "road-test")),
) if {
	some id in judge.each("build.shafts")
}
