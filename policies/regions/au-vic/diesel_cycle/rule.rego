# METADATA
# title: a diesel made from 1996 keeps to the DT80 limits
# description: >-
#   It is an offence to sell or use on a highway a vehicle with a diesel engine made on or
#   after 1 January 1996 that emits more over the DT80 cycle than a table allows, in bands
#   to 3.5 t and to 4.5 t of gross rating. The figures were blank in the copy, and whether
#   the date is that of the engine or of the vehicle can be read either way; each raises the
#   question. Older diesels are outside this regulation, which does not make them legal.
#   Free acceleration is another test.
# related_resources:
# - ref: http://www5.austlii.edu.au/au/legis/vic/num_reg/epr2021n47o2021474/s140.html
#   description: Environment Protection Regulations 2021, regulation 140
# custom:
#   level: note
#   hold: inspection
#   basis: regulation
#   source: >-
#     Environment Protection Regulations 2021 of Victoria, regulation 140, read on
#     2026-11-25 as made, without the figures of its table
#   outcomes:
#   - met
#   - unproven
#   - not applicable
#   remedy: have the pump set, and ask which laboratory measures the cycle
#   caution: exhaust goes outdoors; nobody stands behind a vehicle on rollers
#   question:
#     ask: >-
#       Does the date of the engine or of the vehicle count, which limits apply to this
#       gross rating, and is a test asked after the engine change?
#     office: Environment Protection Authority Victoria
#   reviewed: 2026-11-25
#   since: 0.1.0
#   waivable: true
package regions["au-vic"].diesel_cycle

import data.lib.judge

applies := judge.all_of([
	judge.when("build.engine.fuel", {"diesel"}),
	judge.when_max("build.chassis.ratings.gross", "limits.au.light_gross"),
	judge.any_of([
		judge.when_since("build.engine.built", "1996-01-01"),
		judge.when_since("build.chassis.built", "1996-01-01"),
	]),
])
