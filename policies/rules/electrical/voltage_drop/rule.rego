# METADATA
# title: each circuit loses little voltage
# description: >-
#   The drop along each new circuit stays within what its consumer bears. Lamps go dim,
#   relays chatter, heaters starve.
# related_resources:
# - ref: https://marincofaq.wordpress.com/category/appendix/wire-charts/
#   description: wire charts with the ABYC recommendation
# custom:
#   level: should
#   hold: install
#   basis: standard
#   source: >-
#     ABYC recommendation as printed on a wire chart page read on 2026-11-25: 3 per cent for
#     critical circuits, 10 per cent for others (boats, used here for vehicles)
#   outcomes:
#   - met
#   - not met
#   - unproven
#   - not applicable
#   remedy: fit a thicker wire, or shorten the run
#   reviewed: 2026-11-25
#   since: 0.1.0
#   waivable: true
package rules.electrical.voltage_drop

import data.lib.judge

applies := judge.when_listed("build.electrical.circuits")

_limit := {"critical": "limits.electrical.critical_drop", "ordinary": "limits.electrical.ordinary_drop"}

findings contains judge.limit_max_for(
	judge.of(id, "figures.electrical.voltage_drop_share.*"),
	judge.of(id, "build.electrical.circuits.*.drop"),
	_limit,
) if {
	some id in judge.each("build.electrical.circuits")
}
