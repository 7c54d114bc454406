# METADATA
# title: the headlamps were aimed after the last mass moved
# description: >-
#   The headlamps were aimed once engine, batteries and everything else new were in. A few
#   kilograms more in front and they light the ground before the bumper; aimed too early,
#   they are the thing the inspection finds.
# custom:
#   level: should
#   hold: inspection
#   basis: common-practice
#   source: >-
#     common practice: lamps last, on the settled vehicle, tank full; how they are aimed is
#     local law
#   outcomes:
#   - met
#   - not met
#   - unproven
#   reasons:
#     changed-since: this was changed after the headlamps were aimed
#   remedy: >-
#     aim them again on the finished vehicle, with the load that local law names
#   reviewed: 2026-11-25
#   since: 0.1.0
#   waivable: true
package rules.work.headlamps_last

import data.lib.judge

applies := judge.all_of([
	_told("build.masses.added"),
	_told("build.masses.removed"),
])

# _told: the list is there, or the manifest says that there is none.
_told(list) := judge.any_of([judge.when_listed(list), judge.negate(judge.when_listed(list))])

findings contains judge.dated_at("build.chassis.headlamps_aimed", "inspection")

findings contains judge.dated_at(change, "inspection") if some change in _changes

findings contains judge.because("changed-since", judge.not_after(change, "build.chassis.headlamps_aimed", "inspection")) if {
	some change in _changes
}

_changes contains "build.engine.date"

_changes contains judge.of(id, "build.masses.added.*.date") if some id in judge.each("build.masses.added")

_changes contains judge.of(id, "build.masses.removed.*.date") if some id in judge.each("build.masses.removed")
