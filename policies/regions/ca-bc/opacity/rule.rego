# METADATA
# title: smoke of a heavy diesel is within its opacity limit
# description: >-
#   A heavy diesel is held to an opacity in snap acceleration by the year of its engine:
#   that on the engine label, without a label that of the chassis. A newer engine in an
#   old truck brings the newer limit along. Light vehicles are compared by eye with others
#   of their kind, which is no licence. Absorption coefficients of the European test are
#   not converted.
# related_resources:
# - ref: https://www.bclaws.gov.bc.ca/civix/document/id/complete/statreg/108_99
#   description: B.C. Reg. 108/99, consolidation of October 2021, read on 2026-11-25
# custom:
#   level: should
#   hold: inspection
#   basis: regulation
#   source: >-
#     B.C. Reg. 108/99 sections 1 and 2, consolidation of October 2021. Which vehicles are
#     its class stands in Division 40A of B.C. Reg. 26/58, not read: the class on the
#     chassis label stands for it here
#   needs_basis:
#     inspection: documented with evidence
#   outcomes:
#   - met
#   - not met
#   - unproven
#   - not applicable
#   remedy: have the injection set by a pump shop and the reading repeated
#   caution: >-
#     exhaust goes outdoors, and nobody stands in line with fan or belts while the
#     throttle is snapped
#   reviewed: 2026-11-25
#   since: 0.1.0
#   waivable: true
package regions["ca-bc"].opacity

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
	_since_1991,
])

findings contains judge.limit_max("build.engine.smoke_opacity", "limits.ca_bc.opacity_from_1991")
