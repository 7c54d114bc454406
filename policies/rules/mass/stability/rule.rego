# METADATA
# title: the laden vehicle stands wide enough for its height
# description: >-
#   Half the track over the height of the laden centre of gravity is at least one. A tank or
#   a rack high on the bed takes it below, and the first sharp bend on a slope lays the
#   vehicle on its side.
# related_resources:
# - ref: http://www.nhtsa.dot.gov/cars/rules/rulings/Rollover/Chapt05.html
#   description: what the static stability factor is used for
# custom:
#   level: should
#   hold: strip
#   basis: common-practice
#   source: >-
#     common practice; a vehicle at rest tips at a sideways pull of this many times its own
#     weight (statics). The height is found by weighing the complete vehicle once more with
#     its rear raised, which is why it is asked for before the strip
#   outcomes:
#   - met
#   - not met
#   - unproven
#   - not applicable
#   remedy: >-
#     carry the load lower, or write into the hand-over papers what may not be carried;
#     weigh the complete vehicle with its rear raised while it still is one
#   caution: >-
#     a vehicle with one end raised rolls and slips: chock the wheels, lock the suspension,
#     and stay out from under it
#   reviewed: 2026-11-25
#   since: 0.1.0
#   waivable: true
package rules.mass.stability

import data.lib.judge

applies := judge.all_of([
	judge.when("build.chassis.category", _tall),
	judge.when_listed("build.masses.carried"),
	judge.any_of([
		judge.negate(judge.when("build.chassis.category", {"van"})),
		_high,
	]),
])

# A van's maker reckons with a load between its walls, not with one on its roof.
_high := judge.any_of([judge.when_min(judge.of(id, "build.masses.carried.*.z"), "limits.mass.high_load") |
	some id in judge.each("build.masses.carried")
])

_tall := {"light-truck", "off-road-wagon", "van", "truck"}

findings contains judge.about(
	"masses.carried",
	judge.limit_min("figures.mass.static_stability_laden", "limits.mass.stability"),
)
