# METADATA
# title: the parts of a load weigh what the load weighs
# description: >-
#   Engine, gearbox, transfer case and accessories, each by its paper or the scale, add up
#   to the load within 5 per cent. A sum that falls short has forgotten the part that
#   overloads the hook.
# custom:
#   level: should
#   hold: mockup
#   basis: common-practice
#   source: >-
#     common practice: add up the parts before the hook is rigged
#   outcomes:
#   - met
#   - not met
#   - unproven
#   - not applicable
#   remedy: >-
#     find the part that is missing or counted twice; or weigh the load itself on the hook,
#     just clear of the stand, and write none for its parts
#   caution: >-
#     never stand or reach under a load on a hook; lower it onto stands before working on
#     it. Lifting gear and its use come under local codes: where they ask for a trained or
#     licensed person, call one
#   reviewed: 2026-11-25
#   since: 0.1.0
#   waivable: false
package rules.lifting.parts_agree

import data.lib.judge

applies := judge.when_listed("build.lifting.lifts")

findings contains _agreement(id) if some id in judge.each("build.lifting.lifts")

# None: the load itself was weighed.
_agreement(id) := judge.unasked(_parts(id)) if {
	judge.is_none(_parts(id))
} else := judge.within(
	judge.of(id, "figures.lifting.parts_share.*"),
	"limits.lifting.parts_low",
	"limits.lifting.parts_high",
)

_parts(id) := judge.of(id, "build.lifting.lifts.*.parts").path
