# METADATA
# title: filter, belt, hose and seal have their numbers
# description: >-
#   The list for the owner names filters, belts, hoses and seals of the engine that is
#   in, each with a number that can be ordered. On the road a counter asks for make and
#   year, and sells the parts of the engine that went out.
# custom:
#   level: should
#   hold: handover
#   basis: common-practice
#   source: >-
#     common practice: a list of service parts goes with the vehicle, a copy in its
#     glove box
#   outcomes:
#   - met
#   - not met
#   - unproven
#   reasons:
#     no-filter: no filter is listed
#     no-belt: no belt is listed
#     no-hose: no hose is listed
#     no-seal: no seal is listed
#   remedy: read the numbers off the parts as they go in, and hand the list over
#   reviewed: 2026-11-25
#   since: 0.1.0
#   waivable: true
package rules.records.service_parts

import data.lib.judge

findings contains judge.because("no-filter", judge.about(
	"service_parts.filter",
	judge.lists("build.service_parts.*.kind", "filter"),
))

findings contains judge.because("no-belt", judge.about(
	"service_parts.belt",
	judge.lists("build.service_parts.*.kind", "belt"),
))

findings contains judge.because("no-hose", judge.about(
	"service_parts.hose",
	judge.lists("build.service_parts.*.kind", "hose"),
))

findings contains judge.because("no-seal", judge.about(
	"service_parts.seal",
	judge.lists("build.service_parts.*.kind", "seal"),
))

findings contains judge.present_at(judge.of(id, "build.service_parts.*.number"), "handover") if {
	some id in judge.each("build.service_parts")
}
