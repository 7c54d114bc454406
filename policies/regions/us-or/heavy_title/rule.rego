# METADATA
# title: a truck up to 26,000 lb has an engine of 2010 or later
# description: >-
#   In the three counties a new title is refused since 1 January 2025 to a diesel truck
#   of 14,001 to 26,000 lb with an engine of 2009 or older, and its registration from 1
#   January 2029. Renewing plates under the old title is still possible until then. Farm
#   registration is exempt and so judged; an approved and certified retrofit lifts the
#   bar, as do low mileage and small fleets for the heaviest class: with such a paper
#   this rule is set aside.
# related_resources:
# - ref: https://www.oregon.gov/deq/Vehicle-Inspection/Pages/HB2007.aspx
#   description: Oregon Department of Environmental Quality on House Bill 2007
# - ref: https://oregon.gov/odot/mct/pages/diesel-retrofit-compliance-program.aspx
#   description: Oregon Department of Transportation, diesel retrofit compliance program
# custom:
#   level: should
#   hold: plan
#   basis: agency-guidance
#   source: >-
#     page of the Oregon Department of Environmental Quality on House Bill 2007;
#     exemptions by a page of the Department of Transportation; the act and ORS 803.591
#     were not read
#   outcomes:
#   - met
#   - not met
#   - unproven
#   - not applicable
#   remedy: >-
#     choose an engine of 2010 or later, or one with an approved retrofit, if the truck
#     needs a title or is to stay
#   reviewed: 2026-11-25
#   since: 0.1.0
#   waivable: true
package regions["us-or"].heavy_title

import data.lib.judge

applies := judge.all_of([
	judge.from_day("2025-01-01"),
	judge.when_zone({"Clackamas", "Multnomah", "Washington"}),
	judge.when("build.engine.fuel", {"diesel"}),
	judge.negate(judge.when("build.registration.use", {"farm"})),
	judge.negate(judge.when_max("build.chassis.ratings.gross", "limits.us_or.heavy_gross")),
	judge.when_max("build.chassis.ratings.gross", "limits.us_or.heaviest_gross"),
])

findings contains judge.limit_min("build.engine.model_year", "limits.us_or.titled_engine_year")
