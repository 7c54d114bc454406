# METADATA
# title: gearbox and pinion slopes were measured as found
# description: >-
#   The slopes of gearbox and pinions were measured with the springs settled. They are the
#   angles at which this drive line ran quietly; with the old engine out, a new gearbox is
#   set by guess and shakes at one speed for ever.
# custom:
#   level: should
#   hold: strip
#   basis: own-record
#   source: >-
#     what the hold point strip is for: values that dismantling destroys
#   needs_basis:
#     strip: measured
#   outcomes:
#   - met
#   - unproven
#   - not applicable
#   remedy: >-
#     lay a digital level on the machined faces, vehicle on its wheels and rolled back and
#     forth once; none for the pinion of an axle that is not driven
#   caution: >-
#     a vehicle that is rolled or stands on a slope runs away: chock it, and stay out from
#     under it
#   reviewed: 2026-11-25
#   since: 0.1.0
#   waivable: true
package rules.baseline.slopes

import data.lib.judge

applies := judge.when_there("build.shafts")

_pinions := {"build.baseline.slopes.front_pinion", "build.baseline.slopes.rear_pinion"}

findings contains judge.present_at("build.baseline.slopes.gearbox", "strip")

findings contains judge.present_at(pinion, "strip") if {
	some pinion in _pinions
	not judge.is_none(pinion)
}
