# METADATA
# title: a light-duty truck is within the light-duty rating
# description: >-
#   A light-duty truck ends at 8,500 lb of gross rating. Above that the engine, not the
#   vehicle, is what was certified, and every later answer turns on it. The class follows
#   the maker's label, whatever was changed since; passenger cars have no such bound, and
#   some passenger vehicles above it were certified as light-duty from 2004 on (from
#   memory).
# related_resources:
# - ref: https://www.law.cornell.edu/definitions/index.php?width=840&height=800&iframe=true&def_id=75a1fce16ebbdc03d6699513bfc316c4&term_occur=999&term_src=Title:40:Chapter:I:Subchapter:C:Part:86:Subpart:A:86.096-2
#   description: light-duty truck, 40 CFR 86.082-2
# custom:
#   level: should
#   hold: plan
#   basis: regulation
#   source: >-
#     40 CFR 86.082-2, light-duty truck: gross rating to 8,500 lb; its bounds of 6,000 lb
#     curb weight and 45 sq ft frontal area are not examined
#   outcomes:
#   - met
#   - not met
#   - unproven
#   - not applicable
#   remedy: >-
#     read class and gross rating off the maker's labels again, and ask the chassis maker
#     which class the vehicle was certified in
#   reviewed: 2026-11-25
#   since: 0.1.0
#   waivable: true
package regions.us.chassis_class

import data.lib.judge

applies := judge.all_of([
	judge.when("build.chassis.certification.class", {"light-duty"}),
	judge.when("build.chassis.category", {"light-truck", "off-road-wagon", "van", "truck"}),
])

findings contains judge.limit_max("build.chassis.ratings.gross", "limits.us.light_duty_gross")
