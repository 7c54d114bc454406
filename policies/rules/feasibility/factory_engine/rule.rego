# METADATA
# title: the chassis maker never sold it with the new fuel
# description: >-
#   A hint, where the maker sold the same chassis with an engine of the new fuel: that one
#   brings cluster, tank sender, mounts and its fuel on the title, or its parts book lists
#   them. Worth a look before the first chassis is paid for.
# custom:
#   level: note
#   hold: plan
#   basis: common-practice
#   source: >-
#     common practice: choose the chassis that was built nearest to what it shall become
#   outcomes:
#   - met
#   - not met
#   - unproven
#   - not applicable
#   remedy: >-
#     look for a chassis that was built with the new fuel, or buy its cluster, sender and
#     mounts
#   reviewed: 2026-11-25
#   since: 0.1.0
#   waivable: true
package rules.feasibility.factory_engine

import data.lib.judge

applies := judge.all_of([
	judge.when("build.build.hold", {"none"}),
	judge.when_differs("build.outgoing_engine.fuel", "build.engine.fuel"),
	judge.when_listed("build.chassis.engine_options"),
])

# The engine that goes in is one of those: nothing is left to look for.
_sold_with_it := [id |
	some id in judge.each("build.chassis.engine_options")
	judge.equals(judge.of(id, "build.chassis.engine_options.*.family"), "build.engine.family").outcome == "met"
]

findings contains judge.differs(judge.of(id, "build.chassis.engine_options.*.fuel"), "build.engine.fuel") if {
	count(_sold_with_it) == 0
	some id in judge.each("build.chassis.engine_options")
}

findings contains judge.unasked(judge.of(id, "build.chassis.engine_options.*.fuel")) if some id in _sold_with_it
