# METADATA
# title: hot and sensitive parts keep their distance
# description: >-
#   Fuel, brake lines and wiring lie 150 mm from hot parts, or 50 mm behind a vented shield.
#   A turbine housing glows on a grade; brake fluid boils and looms melt beside it.
# custom:
#   level: should
#   hold: install
#   basis: common-practice
#   source: >-
#     common practice: 6 in unshielded, 2 in with a vented shield and an air gap
#   outcomes:
#   - met
#   - not met
#   - unproven
#   - not applicable
#   remedy: >-
#     reroute the line or loom, or fit a vented shield with an air gap
#   caution: >-
#     let the engine cool before working near its exhaust; fuel on a hot turbine burns at
#     once
#   reviewed: 2026-11-25
#   since: 0.1.0
#   waivable: true
package rules.bay.hot_neighbours

import data.lib.judge

applies := judge.when_listed("build.bay.neighbours")

_limit := {true: "limits.bay.shielded_gap", false: "limits.bay.open_gap"}

findings contains judge.limit_min_for(
	judge.of(id, "build.bay.neighbours.*.distance"),
	judge.of(id, "build.bay.neighbours.*.shielded"),
	_limit,
) if {
	some id in judge.each("build.bay.neighbours")
}
