# METADATA
# title: each consumer gets the vacuum it needs
# description: >-
#   The vacuum at warm idle is at least what each consumer needs by its maker. Heater flaps
#   hide a weak pump; the brake booster does not.
# custom:
#   level: must
#   hold: road-test
#   basis: manufacturer
#   source: >-
#     vacuum that the maker of the booster or actuator asks for
#   needs_basis:
#     road-test: measured
#   outcomes:
#   - met
#   - not met
#   - unproven
#   - not applicable
#   remedy: >-
#     find the leak, fit a reservoir with a check valve, or a larger pump
#   caution: >-
#     brakes are worked on and proved by who is trained for it, where local law asks for it;
#     nobody drives on an unproved brake beyond walking pace on closed ground
#   reviewed: 2026-11-25
#   since: 0.1.0
#   waivable: false
package rules.vacuum.level_per_consumer

import data.lib.judge

applies := judge.when_listed("build.vacuum.consumers")

findings contains judge.limit_min(
	judge.of(id, "figures.hydraulics.vacuum_margin.*"),
	"limits.vacuum.margin",
) if {
	some id in judge.each("build.vacuum.consumers")
}
