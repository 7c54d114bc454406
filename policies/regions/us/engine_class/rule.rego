# METADATA
# title: an engine of another class than the chassis is accepted
# description: >-
#   Light-duty vehicles are certified whole, heavy-duty ones by their engine. A heavy-duty
#   or nonroad engine, or one that was never certified, in a light-duty chassis has no
#   certified configuration to match, and the fact sheet is remembered as forbidding it.
# related_resources:
# - ref: http://www.off-road.com/trucks-4x4/tech/engine-switching-fact-sheet-20126.html
#   description: copy of the EPA engine switching fact sheet, part A read on 2026-11-25
# custom:
#   level: note
#   hold: plan
#   basis: memory
#   source: >-
#     EPA engine switching fact sheet, its part on heavy-duty engines, and 40 CFR
#     51.357(d); neither was read
#   outcomes:
#   - met
#   - unproven
#   - not applicable
#   remedy: look for a donor of the class on the label of the chassis before money is spent
#   question:
#     ask: >-
#       May an engine of this class, or one never certified for the road, go into a chassis
#       certified in another class, and on what evidence?
#     office: US Environmental Protection Agency, vehicle and engine compliance
#   reviewed: 2026-11-25
#   since: 0.1.0
#   waivable: true
package regions.us.engine_class

import data.lib.judge

applies := judge.all_of([
	judge.when_min("build.chassis.model_year", "limits.us.first_standard_year"),
	judge.any_of([
		judge.when("build.engine.certification.class", {"nonroad", "none"}),
		judge.when_differs("build.chassis.certification.class", "build.engine.certification.class"),
	]),
])
