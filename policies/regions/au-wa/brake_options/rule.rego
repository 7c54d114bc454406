# METADATA
# title: a larger engine than its brakes were sold with is approved
# description: >-
#   A car must not get an engine of greater displacement than one that was available as an
#   option with the same braking system, unless it is approved first. Displacement alone
#   counts here, not power or torque. Within the options no approval is needed by this
#   regulation; that alone makes no engine legal. Only passenger cars are examined;
#   car_or_derivative asks for the others.
# related_resources:
# - ref: http://classic.austlii.edu.au/au/legis/wa/consol_reg/rtr2014295/s235.html
#   description: Road Traffic (Vehicles) Regulations 2014, regulation 235
# custom:
#   level: must
#   hold: plan
#   basis: regulation
#   source: >-
#     Road Traffic (Vehicles) Regulations 2014, regulation 235(2) and item 1 of its table,
#     read on 2026-11-25
#   outcomes:
#   - met
#   - not met
#   - unproven
#   - not applicable
#   reasons:
#     other-brakes: an engine this large was offered only with other brakes
#   remedy: >-
#     apply for approval before anything is bought and record the paper as the document of a
#     waiver, or take a smaller engine
#   reviewed: 2026-11-25
#   since: 0.1.0
#   waivable: true
package regions["au-wa"].brake_options

import data.lib.judge

applies := judge.when("build.chassis.category", {"passenger-car"})

_against_largest := judge.limit_max("figures.approval.displacement_over_option", "limits.au_wa.option_share")

# Options that are large enough, or may be, each with what is known of its brakes.
_as_large := [judge.worst([size, judge.one_of(judge.of(id, "build.chassis.engine_options.*.brakes_kept"), {true})]) |
	some id in judge.each("build.chassis.engine_options")
	size := judge.limit_max("build.engine.displacement", judge.of(id, "build.chassis.engine_options.*.displacement"))
	size.outcome != "not met"
]

# Where no option is large enough, size alone decides.
_held := judge.worst([_against_largest, judge.because("other-brakes", brakes)]) if {
	brakes := judge.best(_as_large)
} else := _against_largest

findings contains judge.about("engine.displacement", _held)
