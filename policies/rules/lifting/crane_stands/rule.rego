# METADATA
# title: the crane stands twice as firm as the load tips it
# description: >-
#   The hook hangs behind the front wheels of the crane, or the load tips it no more than
#   half as hard as its own mass holds it down. Over a bumper the legs end short of the
#   load, and the crane goes over its front wheels with the engine in the air.
# custom:
#   level: should
#   hold: mockup
#   basis: common-practice
#   source: >-
#     common practice: half of the tipping moment; the balance about the front wheels is
#     statics
#   outcomes:
#   - met
#   - not met
#   - unproven
#   - not applicable
#   remedy: >-
#     take the front panel or the bumper off so that the legs reach under the load, or roll
#     the vehicle and leave the crane where it stands; nobody sits on the crane
#   caution: >-
#     never stand or reach under a load on a hook; lower it onto stands before working on
#     it. Lifting gear and its use come under local codes: where they ask for a trained or
#     licensed person, call one
#   reviewed: 2026-11-25
#   since: 0.1.0
#   waivable: false
package rules.lifting.crane_stands

import data.lib.judge

applies := judge.when_listed("build.lifting.lifts")

# Behind its front wheels a crane cannot tip forward, whatever it weighs.
findings contains _stands(id) if some id in judge.each("build.lifting.lifts")

# A gantry has no front wheels to go over.
_stands(id) := judge.unasked(judge.of(id, "build.lifting.lifts.*.overhang")) if {
	judge.is_none(judge.of(id, "build.lifting.lifts.*.overhang").path)
} else := behind if {
	behind := judge.limit_max(judge.of(id, "build.lifting.lifts.*.overhang"), "limits.lifting.overhang")
	behind.outcome == "met"
} else := judge.limit_max(judge.of(id, "figures.lifting.tipping_use.*"), "limits.lifting.tipping")
