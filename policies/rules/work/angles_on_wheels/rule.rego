# METADATA
# title: shaft angles were measured on settled springs
# description: >-
#   The joint angles were measured with the vehicle on its wheels and the new engine in it.
#   On stands the axles hang and every angle is wrong by degrees; before the engine is in
#   the front still stands high.
# custom:
#   level: should
#   hold: install
#   basis: common-practice
#   source: >-
#     common practice: on its wheels, rolled back and forth once, full weight on
#   outcomes:
#   - met
#   - not met
#   - unproven
#   - not applicable
#   reasons:
#     before-engine: by then the new engine was not in
#   remedy: >-
#     let it down on its wheels, roll it a length and back, and measure all slopes again
#   caution: >-
#     a vehicle that is rolled runs away: somebody at the brake, chocks at hand, nobody
#     under it
#   reviewed: 2026-11-25
#   since: 0.1.0
#   waivable: true
package rules.work.angles_on_wheels

import data.lib.judge

applies := judge.when_listed("build.shafts")

findings contains judge.one_of(judge.of(id, "build.shafts.*.standing"), {"on-wheels"}) if {
	some id in judge.each("build.shafts")
}

findings contains judge.dated_at("build.engine.date", "install")

findings contains judge.because("before-engine", judge.not_after("build.engine.date", judge.of(id, "build.shafts.*.measured"), "install")) if {
	some id in judge.each("build.shafts")
}
