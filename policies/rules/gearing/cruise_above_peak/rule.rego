# METADATA
# title: a diesel cruises above the speed of its peak torque
# description: >-
#   At 100 km/h in top gear a diesel turns at least as fast as where its torque peaks. A
#   grade that slows it then makes it pull harder; geared below the peak it loses speed and
#   torque together, lugs, and every hill costs a gear.
# custom:
#   level: should
#   hold: plan
#   basis: common-practice
#   source: >-
#     common practice; rolling without slip; speed of peak torque from the engine maker
#   outcomes:
#   - met
#   - not met
#   - unproven
#   - not applicable
#   remedy: >-
#     choose a shorter axle ratio or top gear, or smaller tyres, so that 100 km/h lies above
#     the torque peak
#   reviewed: 2026-11-25
#   since: 0.1.0
#   waivable: true
package rules.gearing.cruise_above_peak

import data.lib.judge

applies := judge.all_of([
	judge.when("build.engine.fuel", {"diesel"}),
	judge.unless("build.registration.use", {"farm"}),
])

findings contains judge.about(
	"axles.rear.ratio",
	judge.limit_min("figures.gearing.cruise_speed", "build.engine.torque_speed"),
)
