# METADATA
# title: smoke of a heavy diesel is within its opacity limit
# description: >-
#   No owner or driver of a heavy-duty vehicle may let its exhaust be darker than a
#   limit that follows the model year of the engine, anywhere in the state. A citation
#   is written only a full percentage point above it; that margin belongs to the meter
#   and is not spent here. Engines before 1970 have no limit in the text.
# related_resources:
# - ref: http://nvrules.elaws.us/NAC/445B.7665
#   description: NAC 445B.7665, standards of opacity
# - ref: http://www.dmvnv.com/news/02-166.htm
#   description: release of 20 December 2002
# custom:
#   level: must
#   hold: inspection
#   basis: regulation
#   source: >-
#     NAC 445B.7665(1) and (2), read in a copy of about 2015, by SAE J1667; that
#     heavy-duty begins at 8,500 lb is from a release of the Department of Motor
#     Vehicles of 2002
#   needs_basis:
#     inspection: documented with evidence
#   outcomes:
#   - met
#   - not met
#   - unproven
#   - not applicable
#   remedy: have the injection set by a pump shop and the reading repeated
#   caution: >-
#     exhaust gas goes outdoors, and nobody stands in line with fan or belts while the
#     throttle is snapped
#   reviewed: 2026-11-25
#   since: 0.1.0
#   waivable: true
package regions["us-nv"].heavy_opacity

import data.lib.judge

_bands := [
	{"from": "limits.us_nv.opacity_1991", "limit": "limits.us_nv.opacity_from_1991"},
	{"from": "limits.us_nv.opacity_1977", "limit": "limits.us_nv.opacity_from_1977"},
]

applies := judge.all_of([
	judge.when("build.engine.fuel", {"diesel"}),
	judge.when_min("build.chassis.ratings.gross", "limits.us_nv.heavy_gross"),
	judge.when_min("build.engine.model_year", "limits.us_nv.opacity_1970"),
])

findings contains judge.about("engine.smoke_opacity", judge.limit_max_from(
	"build.engine.smoke_opacity",
	"build.engine.model_year",
	_bands,
	"limits.us_nv.opacity_from_1970",
))
