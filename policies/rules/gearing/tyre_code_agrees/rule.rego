# METADATA
# title: the tyre measures what its size code says
# description: >-
#   The diameter given for the rear tyre is within 5 per cent of what its size code stands
#   for. One of the two is a slip of the pen otherwise, and every speed and ratio computed
#   from it is wrong.
# related_resources:
# - ref: https://tiresize.com/tire-size-meaning
#   description: meaning of metric and inch size codes
# - ref: https://www.explorerforum.com/forums/threads/size-does-matter.125551
#   description: inch sizes are nominal
# custom:
#   level: should
#   hold: plan
#   basis: handbook
#   source: >-
#     meaning of the numbers of a size code; real tyres stand up to 3 per cent lower than an
#     inch size says, the rest is for wear
#   outcomes:
#   - met
#   - not met
#   - unproven
#   - not applicable
#   remedy: >-
#     read the sidewall again and tape the tyre
#   reviewed: 2026-11-25
#   since: 0.1.0
#   waivable: true
package rules.gearing.tyre_code_agrees

import data.lib.judge

applies := judge.when_there("build.chassis.tyres.rear_size.diameter")

findings contains judge.about("chassis.tyres.rear_diameter", judge.within(
	"figures.gearing.tyre_agreement",
	"limits.gearing.tyre_low",
	"limits.gearing.tyre_high",
))
