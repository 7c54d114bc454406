# METADATA
# title: ten to fifteen per cent of a trailer rest on the hitch
# description: >-
#   Between 10 and 15 per cent of the loaded trailer presses on the hitch. Less, and the
#   trailer sways at speed; more, and it takes the load off the steered wheels.
# custom:
#   level: should
#   hold: plan
#   basis: memory
#   source: >-
#     from memory: trailer makers' handbooks in the United States. Elsewhere trailers are
#     built for less, and the local code is asked
#   outcomes:
#   - met
#   - not met
#   - unproven
#   - not applicable
#   remedy: >-
#     shift the load of the trailer forward or back, and weigh the tongue at towing height
#     again
#   reviewed: 2026-11-25
#   since: 0.1.0
#   waivable: true
package rules.mass.tongue_share

import data.lib.judge

applies := judge.all_of([
	judge.when_there("build.masses.trailer"),
	judge.in_region({"US"}),
])

findings contains judge.about("masses.trailer.tongue", judge.within(
	"figures.mass.tongue_share",
	"limits.mass.tongue_low",
	"limits.mass.tongue_high",
))
