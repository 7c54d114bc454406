# METADATA
# title: a diesel stays within 30 % opacity in area B
# description: >-
#   Around Tucson diesels of every size are loaded on a dynamometer and their smoke
#   read; what fails in Phoenix can pass here. The print of that test is the reading to
#   enter. The figures come from an agency page of about 2010 and may have moved.
# related_resources:
# - ref: http://www.azdeq.gov/environ/air/vei/diesel.html
#   description: Arizona Department of Environmental Quality on diesel vehicles, page of about 2010
# custom:
#   level: should
#   hold: inspection
#   basis: agency-guidance
#   source: >-
#     page of the Arizona Department of Environmental Quality on diesel vehicles, of
#     about 2010; the rule text with today's figures was not read
#   needs_basis:
#     inspection: measured
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
package regions["us-az"].opacity_area_b

import data.lib.judge

applies := judge.all_of([
	judge.when_zone({"Pima"}),
	judge.when("build.engine.fuel", {"diesel"}),
])

findings contains judge.limit_max("build.engine.smoke_opacity", "limits.us_az.opacity_area_b")
