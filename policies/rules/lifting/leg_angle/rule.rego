# METADATA
# title: sling legs stand at 45 degrees or steeper
# description: >-
#   The legs of a sling stand at 45 degrees from the horizontal or steeper; below 30 degrees
#   nobody but a qualified person lifts. A small error of a flat angle is a large one of the
#   pull, and flat legs slide together and crush what lies between them.
# related_resources:
# - ref: https://cicb.com/determining-sling-to-load-angle-factor-with-a-tape-measure/
#   description: no lift below 30 degrees without a qualified person
# custom:
#   level: should
#   hold: mockup
#   basis: common-practice
#   source: >-
#     common practice: 60 degrees wanted, 45 the least; below 30 only under a qualified
#     person, as printed at the page named
#   outcomes:
#   - met
#   - not met
#   - unproven
#   - not applicable
#   remedy: >-
#     use longer legs, or a spreader bar between them
#   caution: >-
#     never stand or reach under a load on a hook; lower it onto stands before working on
#     it. Lifting gear and its use come under local codes: where they ask for a trained or
#     licensed person, call one
#   reviewed: 2026-11-25
#   since: 0.1.0
#   waivable: false
package rules.lifting.leg_angle

import data.lib.judge

applies := judge.when_listed("build.lifting.lifts")

findings contains judge.limit_min(
	judge.of(id, "build.lifting.lifts.*.leg_angle"),
	"limits.lifting.leg_angle",
) if {
	some id in judge.each("build.lifting.lifts")
}
