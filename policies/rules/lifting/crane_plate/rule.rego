# METADATA
# title: the crane is rated for all that hangs on its hook
# description: >-
#   What hangs on the hook, leveller and slings included, is no more than the plate of the
#   crane says for the boom hole used. A boom pulled out one hole too far folds, or the
#   crane tips, with the engine over the bay.
# custom:
#   level: must
#   hold: mockup
#   basis: manufacturer
#   source: >-
#     plate of the crane, which names a rating for each boom hole
#   outcomes:
#   - met
#   - not met
#   - unproven
#   - not applicable
#   remedy: >-
#     shorten the boom, take gearbox and accessories off first, or bring a larger crane
#   caution: >-
#     never stand or reach under a load on a hook; lower it onto stands before working on
#     it. Lifting gear and its use come under local codes: where they ask for a trained or
#     licensed person, call one
#   reviewed: 2026-11-25
#   since: 0.1.0
#   waivable: false
package rules.lifting.crane_plate

import data.lib.judge

applies := judge.when_listed("build.lifting.lifts")

findings contains judge.limit_max(
	judge.of(id, "figures.lifting.hook_load.*"),
	judge.of(id, "build.lifting.lifts.*.crane_limit"),
) if {
	some id in judge.each("build.lifting.lifts")
}
