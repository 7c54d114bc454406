# METADATA
# title: the insulation of each circuit bears its heat
# description: >-
#   Steady current, bundle and engine bay together leave the conductor cooler than the
#   class printed on its insulation. House wire beside a turbocharger melts onto its
#   neighbour, and the loom burns where nobody sees it.
# related_resources:
# - ref: http://federal.elaws.us/cfr/title-33/section-183.425
#   description: 33 CFR 183.425, conductors
# custom:
#   level: must
#   hold: install
#   basis: physics
#   source: >-
#     heat from the square of the current against the rise that 33 CFR 183.425 rates the
#     conductor by; air of 50 °C in the engine bay
#   outcomes:
#   - met
#   - not met
#   - unproven
#   - not applicable
#   remedy: >-
#     fit a larger wire, one of a higher class, or lead it outside the bundle and the
#     engine bay
#   caution: >-
#     disconnect the battery before working on wiring; a short in battery cable starts
#     fires and burns hands
#   reviewed: 2026-11-25
#   since: 0.1.0
#   waivable: true
package rules.electrical.insulation_heat

import data.lib.judge

applies := judge.when_listed("build.electrical.circuits")

findings contains judge.limit_min(
	judge.of(id, "figures.electrical.insulation_margin.*"),
	"limits.electrical.insulation_margin",
) if {
	some id in judge.each("build.electrical.circuits")
}
