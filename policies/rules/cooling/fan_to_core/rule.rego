# METADATA
# title: the engine-driven fan clears the radiator
# description: >-
#   The blades stand at least 3/4 in from the core, better 1 in. The engine moves on its
#   mounts while the radiator does not, and blades bend forward at speed and in deep water: a
#   fan set closer saws the core open.
# related_resources:
# - ref: https://cellphone.manualsonline.com/manuals/mfg/peterbilt/y536008.html?p=145
#   description: fan blade clearance in a medium-duty truck manual
# - ref: https://www.americancooling.com/fan-selection-process/
#   description: a fan maker's clearances
# custom:
#   level: should
#   hold: mockup
#   basis: manufacturer
#   source: >-
#     a truck maker's driver manual: 1 in (25 mm) recommended, 3/4 in (19 mm) least; a fan
#     maker: 1 in before and behind the fan
#   outcomes:
#   - met
#   - not met
#   - unproven
#   - not applicable
#   remedy: >-
#     fit a thinner spacer or a flatter fan, move the radiator forward, or limit the engine's
#     travel
#   caution: >-
#     keep hands, clothes and tools out of the fan, stop the engine to measure, and never
#     stand in line with a turning fan; an electric one starts by itself
#   reviewed: 2026-11-25
#   since: 0.1.0
#   waivable: true
package rules.cooling.fan_to_core

import data.lib.judge

applies := judge.when_there("build.cooling.fan_ratio")

findings contains judge.limit_min("build.cooling.fan_to_core", "limits.cooling.fan_to_core")
