# METADATA
# title: another stationary noise limit is met
# description: >-
#   Goods vehicles, buses, derivatives of cars among them, and vehicles approved to design
#   rule 83/00 have limits in neighbouring regulations that were not read. The rule began
#   with new petrol models of January 2005, and with others later.
# related_resources:
# - ref: http://www5.austlii.edu.au/au/legis/vic/num_reg/epr2021n47o2021474/s143.html
#   description: Environment Protection Regulations 2021, regulation 143
# custom:
#   level: note
#   hold: inspection
#   basis: second-hand
#   source: >-
#     headings and neighbours of regulation 143 of the Environment Protection Regulations
#     2021; their tables were not read
#   outcomes:
#   - met
#   - unproven
#   - not applicable
#   remedy: ask for the limit by category and build date, and have the level measured
#   question:
#     ask: >-
#       Is this vehicle approved to design rule 83/00, which stationary limit applies to it,
#       and is it met with this engine?
#     office: Environment Protection Authority Victoria
#   reviewed: 2026-11-25
#   since: 0.1.0
#   waivable: true
package regions["au-vic"].noise_other

import data.lib.judge

applies := judge.all_of([
	judge.when_differs("build.outgoing_engine.family", "build.engine.family"),
	judge.any_of([
		judge.negate(judge.when("build.chassis.approval_category", {"MA", "MB", "MC"})),
		judge.when_since("build.chassis.built", "2005-01-01"),
	]),
])
