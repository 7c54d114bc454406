# METADATA
# title: each sling leg is tagged for its pull
# description: >-
#   The pull in a sling leg, which grows as the leg lies flatter, is no more than the
#   working load limit on its tag; of several legs under a rigid load only two count. A leg
#   at 30 degrees carries the whole load, not half of it.
# related_resources:
# - ref: https://ashleysling.com/calculating-sling-angles/
#   description: load angle factors of sling legs
# custom:
#   level: must
#   hold: mockup
#   basis: manufacturer
#   source: >-
#     working load limit on the tag of the sling; load angle factors as printed at the page
#     named
#   outcomes:
#   - met
#   - not met
#   - unproven
#   - not applicable
#   remedy: >-
#     use longer legs, a spreader, or a sling with a higher working load limit
#   caution: >-
#     a sling without a readable tag is scrap; never stand or reach under a load on a hook;
#     lower it onto stands before working on it. Lifting gear and its use come under local
#     codes: where they ask for a trained or licensed person, call one
#   reviewed: 2026-11-25
#   since: 0.1.0
#   waivable: false
package rules.lifting.sling_limit

import data.lib.judge

applies := judge.when_listed("build.lifting.lifts")

findings contains judge.limit_max(
	judge.of(id, "figures.lifting.leg_tension.*"),
	judge.of(id, "build.lifting.lifts.*.leg_limit"),
) if {
	some id in judge.each("build.lifting.lifts")
}
