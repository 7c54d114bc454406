# METADATA
# title: emission systems of the chassis that went are accepted
# description: >-
#   A motor vehicle must not be driven unless each of its emission control systems remains
#   fitted and works as designed. What a diesel in a petrol chassis can not keep has to be
#   agreed upon.
# related_resources:
# - ref: http://www.austlii.edu.au/au/legis/wa/consol_reg/rtsr2002368/s7.html
#   description: regulation 7 of 2002
# custom:
#   level: note
#   hold: inspection
#   basis: second-hand
#   source: >-
#     Road Traffic (Vehicle Standards) Regulations 2002, regulation 7, read; an older text
#     whose successor was not found
#   outcomes:
#   - met
#   - unproven
#   - not applicable
#   remedy: list what stays, what goes and what the new engine brings instead
#   question:
#     ask: >-
#       Which of the emission systems the vehicle was made with may be left off with this
#       engine?
#     office: Western Australia, vehicle licensing (chief executive officer)
#   reviewed: 2026-11-25
#   since: 0.1.0
#   waivable: true
package regions["au-wa"].emission_systems

import data.lib.judge

applies := judge.any_of([judge.negate(judge.when(
	judge.of(id, "build.chassis.emission_equipment.*.fitted"),
	{true},
)) |
	some id in judge.each("build.chassis.emission_equipment")
])
