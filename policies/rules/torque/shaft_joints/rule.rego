# METADATA
# title: the joints of each shaft take the torque on the road
# description: >-
#   The torque in a shaft in first low, or that at which the tyres of its axle slip where it
#   is less, is no more than its joints may take, or the engine has no more torque than one
#   that the chassis was sold with before the same shafts. A joint that breaks at speed lets
#   the shaft flail through floor, brake lines and tank.
# related_resources:
# - ref: http://www.manualsdir.com/manuals/258740/spicer-driveline-installation-service-manual.html?page=5
#   description: low gear torque and wheel slip torque
# custom:
#   level: must
#   hold: install
#   basis: manufacturer
#   source: >-
#     the joint maker's torque rating; low gear and wheel slip torque by a driveline maker's
#     installation manual
#   outcomes:
#   - met
#   - not met
#   - unproven
#   - not applicable
#   remedy: >-
#     use a shaft with joints of a larger series, or a torque rating that covers it
#   caution: >-
#     chock the wheels before a shaft comes off: without it neither gear nor a shaft brake
#     holds the vehicle
#   reviewed: 2026-11-25
#   since: 0.1.0
#   waivable: true
package rules.torque.shaft_joints

import data.lib.judge

applies := judge.when_listed("build.shafts")

findings contains judge.about(_shaft(id), judge.rated_or_sold(judge.limit_max(
	judge.of(id, "figures.torque.shaft_use_road.*"),
	"limits.torque.rating",
))) if {
	some id in judge.each("build.shafts")
}

_shaft(id) := judge.of(id, "figures.torque.shaft_use_road.*").subject
