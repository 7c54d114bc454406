# METADATA
# title: the capacity is accepted for the mass of the model
# description: >-
#   For passenger cars and their derivatives the code recommends a largest displacement by
#   the original mass of the model and by induction. The table was not read; what owners
#   report of it leaves the factor for charged engines from 1100 kg open, so no number is
#   applied here. It is a recommendation: the engineer may accept more or less, and ask for
#   tests. It is not run for goods and off-road categories (NA, NB1, MC), for which the code
#   is said to set no recommended limit; goods_and_off_road asks for those. Figure
#   approval.displacement_per_mass prints the ratio for the talk with the engineer.
# related_resources:
# - ref: https://pdfslide.net/documents/section-la-engine-substitution-or-replacement-of-components-such-as-camshafts.html
#   description: VSB 14 section LA, version 2.0 of January 2011, copy
# - ref: https://mx5.net.au/viewtopic.php?p=913695
#   description: an owner on the table
# - ref: https://forum.fefcholden.club/index.php?topic=23325.msg144047
#   description: another owner on the table
# custom:
#   level: note
#   hold: plan
#   basis: second-hand
#   source: >-
#     reference notes on table LA1 of VSB 14 section LA as owners' forums report it; the
#     body of the section was not read
#   outcomes:
#   - met
#   - unproven
#   - not applicable
#   remedy: >-
#     ask the engineer who will sign, with the original mass of the model with its largest
#     engine, before buying the donor
#   question:
#     ask: >-
#       Which largest displacement does table LA1 give for this model and this induction,
#       and is the engine accepted?
#     office: registration authority of the state, and the engineer it recognises
#   reviewed: 2026-11-25
#   since: 0.1.0
#   waivable: true
package regions.au.capacity_table

import data.lib.judge

# No recommended limit for these, or, for NB2, not a light vehicle of the code at all.
_carved_out := {"MC", "NA", "NB1", "NB2"}

applies := judge.all_of([
	judge.when_differs("build.outgoing_engine.family", "build.engine.family"),
	judge.negate(judge.when("build.chassis.approval_category", _carved_out)),
])
