# METADATA
# title: the fan moves the air that the radiator needs
# description: >-
#   Through this core and shroud the fan moves the air that carries the full heat on the
#   hottest day at the highest altitude, at a crawl with no wind to help. An electric fan
#   that cooled the idling car gives a loaded diesel a third of its air on the grade.
# custom:
#   level: should
#   hold: mockup
#   basis: physics
#   source: >-
#     heat balance of the cooling air; flow from the fan maker's curve through a core, not in
#     free air
#   outcomes:
#   - met
#   - not met
#   - unproven
#   - not applicable
#   remedy: >-
#     keep the engine's own fan on its clutch, fit a larger fan or a second electric one, and
#     shroud it
#   caution: >-
#     keep hands, clothes and tools out of the fan, stop the engine to measure, and never
#     stand in line with a turning fan; an electric one starts by itself
#   reviewed: 2026-11-25
#   since: 0.1.0
#   waivable: true
package rules.cooling.fan_flow

import data.lib.judge

applies := judge.when_there("build.cooling.heat_rejection")

findings contains judge.about(
	"cooling.fan_flow",
	judge.limit_max("figures.cooling.air_flow_needed", "build.cooling.fan_flow"),
)
