# METADATA
# title: the vacuum is enough where the air is thin
# description: >-
#   What is measured in the shop, less what the air loses on the highest road, is still
#   what each consumer needs. A pump that is just good enough in the valley leaves the
#   brake half assisted on the pass.
# custom:
#   level: should
#   hold: road-test
#   basis: physics
#   source: >-
#     US Standard Atmosphere 1976: a pump takes away the same share of the air around
#   outcomes:
#   - met
#   - not met
#   - unproven
#   - not applicable
#   remedy: >-
#     fit a larger pump or a tighter one; a reservoir alone does not help on a long
#     descent
#   caution: >-
#     brakes are worked on and proved by who is trained for it, where local law asks for
#     it; nobody drives on an unproved brake beyond walking pace on closed ground
#   reviewed: 2026-11-25
#   since: 0.1.0
#   waivable: false
package rules.vacuum.altitude

import data.lib.judge

applies := judge.when_listed("build.vacuum.consumers")

findings contains judge.limit_min(
	judge.of(id, "figures.hydraulics.vacuum_margin_altitude.*"),
	"limits.vacuum.margin",
) if {
	some id in judge.each("build.vacuum.consumers")
}
