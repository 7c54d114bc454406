# METADATA
# title: the cold start aid has a protected feed of its own
# description: >-
#   Grid heater or glow plugs have a circuit of their own, laid out for what they draw,
#   with its fuse. Tapped off the ignition switch they burn its contacts out, and the
#   first frost leaves the truck dead with a hot loom.
# custom:
#   level: should
#   hold: install
#   basis: common-practice
#   source: >-
#     common practice: own relay or contactor, own fuse, cable by the power of the
#     heaters
#   outcomes:
#   - met
#   - not met
#   - unproven
#   - not applicable
#   reasons:
#     no-circuit: no circuit is listed that feeds the cold start aid alone
#   remedy: >-
#     run a cable from the battery through a fuse and a relay made for the current to
#     the heaters
#   caution: >-
#     disconnect the battery before working on wiring; a short in battery cable starts
#     fires and burns hands
#   reviewed: 2026-11-25
#   since: 0.1.0
#   waivable: true
package rules.electrical.preheat_circuit

import data.lib.judge

applies := judge.all_of([
	judge.when("build.engine.fuel", {"diesel"}),
	judge.when_there("build.electrical.preheat"),
])

findings contains judge.present_at("build.electrical.preheat.power", "install")

findings contains judge.because("no-circuit", judge.lists("build.electrical.circuits.*.consumer", "preheat")) if {
	count(judge.lacks(judge.ref("build.electrical.preheat.power"))) == 0
}

findings contains judge.worst([
	judge.present_at(judge.of(id, "build.electrical.circuits.*.fuse"), "install"),
	judge.limit_min(judge.of(id, "figures.electrical.preheat_cover.*"), "limits.electrical.preheat_cover"),
]) if {
	some id in judge.each("build.electrical.circuits")
	judge.holds(judge.of(id, "build.electrical.circuits.*.consumer"), "preheat")
}
