# METADATA
# title: isolators stand as designed and go in unforced
# description: >-
#   Each isolator is pressed or sheared the way its maker drew it, and the mounts were
#   placed first or slipped in under the hanging unit. Turned on its side or levered into
#   line, the rubber starts its life torn and ends it within months.
# custom:
#   level: should
#   hold: install
#   basis: common-practice
#   source: >-
#     common practice; the isolator maker's drawing shows how it carries
#   outcomes:
#   - met
#   - not met
#   - unproven
#   remedy: >-
#     turn the isolator as drawn, slot the bracket or move it, and try again with the bolts
#     going in by hand
#   caution: >-
#     a unit that hangs or stands on a jack falls: keep hands out of the gap between mount
#     and bracket
#   reviewed: 2026-11-25
#   since: 0.1.0
#   waivable: true
package rules.frame.isolators_as_designed

import data.lib.judge

findings contains judge.one_of("build.frame.mounts.oriented", {true})

findings contains judge.one_of("build.frame.mounts.fitted", {"mounts-first", "slipped-in"})
