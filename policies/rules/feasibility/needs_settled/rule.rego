# METADATA
# title: each need of the new engine has somewhere it comes from
# description: >-
#   Cluster, speed signal, tank sender, tank and return, place for a second battery, heater
#   pipes and brake vacuum each come from the vehicle, the donor, or a part bought or made.
#   A chassis sold with a diesel brings cluster, sender and the easier licence, one sold
#   with petrol often the better way for heater pipes; what neither brings is paid for
#   later.
# custom:
#   level: should
#   hold: plan
#   basis: common-practice
#   source: >-
#     common practice: the list by which a chassis is chosen
#   outcomes:
#   - met
#   - not met
#   - unproven
#   remedy: >-
#     go through the list with both vehicles in front of you, and choose the chassis by what
#     is left open
#   reviewed: 2026-11-25
#   since: 0.1.0
#   waivable: true
package rules.feasibility.needs_settled

import data.lib.judge

_needs := {
	"build.chassis.brings.brake_vacuum",
	"build.chassis.brings.engine_speed_signal",
	"build.chassis.brings.heater_routing",
	"build.chassis.brings.instrument_cluster",
	"build.chassis.brings.second_battery_place",
	"build.chassis.brings.tank_return",
	"build.chassis.brings.tank_sender",
}

# What a petrol engine takes away with it is asked for by its own rule.
_with_petrol := {"build.chassis.brings.brake_vacuum", "build.chassis.brings.engine_speed_signal"}

_petrol_to_diesel := judge.all_of([
	judge.when("build.outgoing_engine.fuel", {"petrol"}),
	judge.when("build.engine.fuel", {"diesel"}),
])

_asked_there(need) if {
	_petrol_to_diesel.state == "yes"
	need in _with_petrol
}

findings contains judge.one_of(need, {"vehicle", "donor", "bought", "made", "not-needed"}) if {
	some need in _needs
	not _asked_there(need)
}
