# METADATA
# title: the charge-air cooler takes out most of the heat
# description: >-
#   At full load the cooler takes out three quarters of the heat between the charge and the
#   surrounding air. Behind the condenser and without a duct it gets no air, and the engine
#   smokes and runs hot on the first grade.
# custom:
#   level: should
#   hold: road-test
#   basis: memory
#   source: >-
#     engine makers' installation bulletins, from memory; readings of one full-load run
#   outcomes:
#   - met
#   - not met
#   - unproven
#   - not applicable
#   remedy: >-
#     seal the gaps around the cooler, move it in front of the condenser, or fit a larger
#     one
#   caution: >-
#     let exhaust and charge pipes cool before working on them; run engines where exhaust
#     gas is drawn off
#   reviewed: 2026-11-25
#   since: 0.1.0
#   waivable: true
package rules.air.cooler_effectiveness

import data.lib.judge

applies := judge.when("build.engine.induction", {"turbocharged-intercooled"})

findings contains judge.about(
	"charge_air.manifold_in",
	judge.limit_min("figures.air.cooler_effectiveness", "limits.air.cooler_effectiveness"),
)
