# METADATA
# title: the fan turns no faster than its maker allows
# description: >-
#   At governed speed, with its clutch locked, the fan stays within the speed on its label. A
#   fan made for a slow engine, put on a fast one or on a larger crank pulley, throws its
#   blades through radiator and bonnet.
# custom:
#   level: must
#   hold: first-start
#   basis: manufacturer
#   source: >-
#     highest speed from the fan's label or its maker's data sheet
#   outcomes:
#   - met
#   - not met
#   - unproven
#   - not applicable
#   remedy: >-
#     fit a fan rated for the speed, a larger fan pulley or a smaller crank pulley, and weigh
#     the belt's other drives with it
#   caution: >-
#     keep hands, clothes and tools out of the fan, stop the engine to measure, and never
#     stand in line with a turning fan; an electric one starts by itself; never run a fan
#     that is bent, cracked or repaired
#   reviewed: 2026-11-25
#   since: 0.1.0
#   waivable: true
package rules.cooling.fan_speed

import data.lib.judge

applies := judge.all_of([
	judge.when_there("build.cooling.fan_ratio"),
	judge.when_there("build.cooling.fan_speed_limit"),
])

findings contains judge.about(
	"cooling.fan_ratio",
	judge.limit_max("figures.cooling.fan_speed", "build.cooling.fan_speed_limit"),
)
