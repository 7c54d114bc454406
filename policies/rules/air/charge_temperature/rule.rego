# METADATA
# title: the charge is not much warmer than the air
# description: >-
#   At full load the charge in the manifold is no more than 28 K above the surrounding air.
#   Each ten kelvin more cost power and raise what the pistons and the turbine bear.
# custom:
#   level: should
#   hold: road-test
#   basis: memory
#   source: >-
#     engine makers' installation bulletins, from memory, 15 to 28 K at rated power
#   outcomes:
#   - met
#   - not met
#   - unproven
#   - not applicable
#   remedy: >-
#     give the cooler more air or a larger core, and lag the pipe behind it where it passes
#     the exhaust
#   caution: >-
#     let exhaust and charge pipes cool before working on them; run engines where exhaust
#     gas is drawn off
#   reviewed: 2026-11-25
#   since: 0.1.0
#   waivable: true
package rules.air.charge_temperature

import data.lib.judge

applies := judge.when("build.engine.induction", {"turbocharged-intercooled"})

findings contains judge.about(
	"charge_air.manifold_in",
	judge.limit_max("figures.air.charge_rise", "limits.air.charge_rise"),
)
