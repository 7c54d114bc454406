# METADATA
# title: a heavy diesel is within its opacity limit in area A
# description: >-
#   Around Phoenix a diesel above 8,500 lb is read in snap acceleration, the mean of
#   three, against a limit that follows the model year of its engine and not that of the
#   chassis. The figures come from an agency page of about 2010 and may have moved.
# related_resources:
# - ref: http://www.azdeq.gov/environ/air/vei/diesel.html
#   description: Arizona Department of Environmental Quality on diesel vehicles, page of about 2010
# - ref: https://law.justia.com/codes/arizona/2011/title49/section49-54206
#   description: A.R.S. 49-542.06, roadside tests above 10,000 lb
# custom:
#   level: should
#   hold: inspection
#   basis: agency-guidance
#   source: >-
#     page of the Arizona Department of Environmental Quality on diesel vehicles, of
#     about 2010; the rule text with today's figures was not read; test by SAE J1667
#   needs_basis:
#     inspection: documented
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
package regions["us-az"].opacity_heavy

import data.lib.judge

_bands := [{"from": "limits.us_az.opacity_1991", "limit": "limits.us_az.opacity_from_1991"}]

applies := judge.all_of([
	judge.when_zone({"Maricopa", "Pinal", "Yavapai"}),
	judge.when("build.engine.fuel", {"diesel"}),
	judge.negate(judge.when_max("build.chassis.ratings.gross", "limits.us_az.light_gross")),
])

findings contains judge.about("engine.smoke_opacity", judge.limit_max_from(
	"build.engine.smoke_opacity",
	"build.engine.model_year",
	_bands,
	"limits.us_az.opacity_before_1991",
))
