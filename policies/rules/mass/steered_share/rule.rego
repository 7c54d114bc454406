# METADATA
# title: the steered axle keeps enough of the mass
# description: >-
#   With load on board the front axle still carries the share it needs to steer and to
#   brake. A light engine and a long load behind the rear axle take it away.
# custom:
#   level: should
#   hold: plan
#   basis: memory
#   source: >-
#     from memory: one fifth of the mass on the steered axle, a figure common in vehicle
#     regulations of several countries
#   outcomes:
#   - met
#   - not met
#   - unproven
#   remedy: move load forward or shorten the overhang
#   reviewed: 2026-11-25
#   since: 0.1.0
#   waivable: true
package rules.mass.steered_share

import data.lib.judge

findings contains judge.about(
	"masses.carried",
	judge.limit_min("figures.mass.front_share_laden", "limits.mass.steered_share"),
)
