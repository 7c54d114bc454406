# METADATA
# title: the laden vehicle holds a grade in top gear
# description: >-
#   At gross mass, in top gear and at the speed of peak torque, the engine holds a grade of
#   3 per cent. A slow engine geared tall enough for the motorway otherwise falls out of top
#   gear at every bridge. An automatic gearbox changes down by itself.
# custom:
#   level: should
#   hold: plan
#   basis: common-practice
#   source: >-
#     common practice: 3 per cent, an easy motorway grade; pull over weight less rolling
#     resistance, drag of the air left out
#   outcomes:
#   - met
#   - not met
#   - unproven
#   - not applicable
#   remedy: >-
#     choose a shorter axle ratio or top gear, smaller tyres, or an engine with more torque
#   reviewed: 2026-11-25
#   since: 0.1.0
#   waivable: true
package rules.torque.climbs_in_top

import data.lib.judge

applies := judge.unless("build.transmission.type", {"automatic"})

findings contains judge.about(
	"axles.rear.ratio",
	judge.limit_min("figures.torque.gradeability_top", "limits.torque.climb_top"),
)
