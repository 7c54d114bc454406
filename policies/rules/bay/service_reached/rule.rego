# METADATA
# title: what needs service can be reached
# description: >-
#   Dipstick, fillers, drains, filters, bleed screws and belts were reached with their
#   tools, everything in place. An oil filter behind the steering box is changed once, and
#   then no more.
# custom:
#   level: should
#   hold: mockup
#   basis: own-record
#   source: >-
#     the build's own trial with everything in place
#   outcomes:
#   - met
#   - not met
#   - unproven
#   - not applicable
#   remedy: >-
#     move the part or what stands in its way, use a remote filter or a longer filler, and
#     try again
#   reviewed: 2026-11-25
#   since: 0.1.0
#   waivable: true
package rules.bay.service_reached

import data.lib.judge

applies := judge.when_listed("build.bay.service")

findings contains judge.one_of(judge.of(id, "build.bay.service.*.reachable"), {true}) if {
	some id in judge.each("build.bay.service")
}
