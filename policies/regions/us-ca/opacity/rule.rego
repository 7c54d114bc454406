# METADATA
# title: smoke of a heavy diesel is within its opacity limit
# description: >-
#   The snap-acceleration opacity of a heavy diesel is bounded by the model year of its
#   engine, not of the chassis. A retrofit filter sets a lower bound whatever the year, and
#   so does an emission label still missing 45 days after a citation; neither is examined
#   here.
# related_resources:
# - ref: https://casetext.com/regulation/california-code-of-regulations/title-13-motor-vehicles/division-3-air-resources-board/chapter-35-heavy-duty-diesel-smoke-emission-testing-and-heavy-duty-vehicle-emission-control-system-inspections/section-2182-heavy-duty-diesel-vehicle-smoke-opacity-standards-and-test-procedures-excessive-smoke
#   description: 13 CCR 2182
# custom:
#   level: must
#   hold: inspection
#   basis: regulation
#   source: >-
#     13 CCR 2182(a), tested by SAE J1667; that the section reaches vehicles below 14,000
#     lb as well is not excluded, and is not applied here
#   needs_basis:
#     inspection: documented with evidence
#   outcomes:
#   - met
#   - not met
#   - unproven
#   - not applicable
#   remedy: have the injection set by a pump shop and the reading repeated
#   caution: >-
#     exhaust goes outdoors, and nobody stands in line with fan or belts while the throttle
#     is snapped
#   reviewed: 2026-11-25
#   since: 0.1.0
#   waivable: true
package regions["us-ca"].opacity

import data.lib.judge

_bands := [
	{"from": "limits.us_ca.opacity_2007", "limit": "limits.us_ca.opacity_from_2007"},
	{"from": "limits.us_ca.opacity_1997", "limit": "limits.us_ca.opacity_from_1997"},
	{"from": "limits.us_ca.opacity_1991", "limit": "limits.us_ca.opacity_from_1991"},
]

applies := judge.all_of([
	judge.when("build.engine.fuel", {"diesel"}),
	judge.negate(judge.when_max("build.chassis.ratings.gross", "limits.us_ca.light_gross")),
])

findings contains judge.about("engine.smoke_opacity", judge.limit_max_from(
	"build.engine.smoke_opacity",
	"build.engine.model_year",
	_bands,
	"limits.us_ca.opacity_before_1991",
))
