# METADATA
# title: the opacity limit of an older heavy diesel is known
# description: >-
#   For engines before 1991, and where neither engine nor chassis bears a label, the
#   regulation has another row, which is missing in what was read.
# related_resources:
# - ref: https://www.bclaws.gov.bc.ca/civix/document/id/complete/statreg/108_99
#   description: B.C. Reg. 108/99, consolidation of October 2021, read on 2026-11-25
# custom:
#   level: note
#   hold: inspection
#   basis: memory
#   source: >-
#     the row of B.C. Reg. 108/99 for pre-1991 engines was missing in the page read; 55 %
#     from memory is not used
#   outcomes:
#   - met
#   - unproven
#   - not applicable
#   remedy: ask with the year of the engine before the inspection is booked
#   question:
#     ask: Which opacity limit holds for this engine of before 1991?
#     office: Commercial Vehicle Safety and Enforcement, British Columbia
#   reviewed: 2026-11-25
#   since: 0.1.0
#   waivable: true
package regions["ca-bc"].opacity_before_1991

import data.lib.judge

_labelled := judge.negate(judge.when("build.engine.certification.label", {"none"}))

# The label of the engine gives its year; without one the chassis does.
_since_1991 := judge.any_of([
	judge.all_of([_labelled, judge.when_min("build.engine.model_year", "limits.ca_bc.opacity_year")]),
	judge.all_of([judge.negate(_labelled), judge.when_min("build.chassis.model_year", "limits.ca_bc.opacity_year")]),
])

applies := judge.all_of([
	judge.when("build.engine.fuel", {"diesel"}),
	judge.when("build.chassis.certification.class", {"heavy-duty"}),
	judge.negate(_since_1991),
])
