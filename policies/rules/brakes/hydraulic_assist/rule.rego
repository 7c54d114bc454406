# METADATA
# title: the pump feeds the hydraulic brake booster
# description: >-
#   At idle the steering pump gives the flow, and its relief valve the pressure, that
#   the maker of the brake booster asks for. On the pulley of a slow diesel the booster
#   starves in the yard, where steering and brake are worked together.
# custom:
#   level: must
#   hold: install
#   basis: manufacturer
#   source: >-
#     flow and pressure asked for by the booster's maker; 0.9 of the pump's displacement
#     reaches it
#   outcomes:
#   - met
#   - not met
#   - unproven
#   - not applicable
#   remedy: >-
#     fit a smaller pump pulley or a larger pump, and the relief valve that the booster
#     asks for
#   caution: >-
#     brakes are worked on and proved by who is trained for it, where local law asks for
#     it; nobody drives on an unproved brake beyond walking pace on closed ground
#   reviewed: 2026-11-25
#   since: 0.1.0
#   waivable: false
package rules.brakes.hydraulic_assist

import data.lib.judge

applies := judge.all_of([
	judge.when("build.hydraulics.brakes.assist", {"hydraulic"}),
	judge.when_there("build.hydraulics.steering"),
])

findings contains judge.about(
	"hydraulics.brakes.booster_flow",
	judge.limit_min("figures.hydraulics.booster_flow_margin", "limits.brakes.assist_margin"),
)

findings contains judge.about(
	"hydraulics.brakes.booster_pressure",
	judge.limit_min("figures.hydraulics.booster_pressure_margin", "limits.brakes.assist_margin"),
)
