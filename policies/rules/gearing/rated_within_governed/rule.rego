# METADATA
# title: the rated speed lies within the governed speed
# description: >-
#   No governed engine gives its rated power above the speed its governor cuts at. One of
#   the two numbers is from another engine, pump or market, and with it every road speed,
#   shaft speed and cooling figure.
# custom:
#   level: should
#   hold: strip
#   basis: physics
#   source: definition of rated and governed speed
#   outcomes:
#   - met
#   - not met
#   - unproven
#   - not applicable
#   remedy: >-
#     read both speeds off the engine's plate and the pump's tag again, and ask the pump shop
#     by the pump's number
#   reviewed: 2026-11-25
#   since: 0.1.0
#   waivable: true
package rules.gearing.rated_within_governed

import data.lib.judge

# Petrol engines have no governor.
applies := judge.when("build.engine.fuel", {"diesel"})

findings contains judge.about(
	"engine.rated_speed",
	judge.limit_max("figures.gearing.rated_speed_ratio", "limits.gearing.rated_speed_ratio"),
)
