# METADATA
# title: the hoist at hand bears what is to be lifted at once
# description: >-
#   The parts that are planned to go in as one piece, with the tackle, are within the plate
#   of the crane at the boom hole that reaches. Otherwise engine and gearbox go in one after
#   the other, and the tunnel has to be open for it: better known before the crane is
#   rented.
# custom:
#   level: should
#   hold: plan
#   basis: manufacturer
#   source: >-
#     plate of the crane, which names a rating for each boom hole
#   outcomes:
#   - met
#   - not met
#   - unproven
#   - not applicable
#   remedy: >-
#     plan to lift in smaller pieces, or rent a larger crane; none for the parts of a load
#     that was weighed itself
#   caution: >-
#     never stand or reach under a load on a hook. Lifting gear and its use come under local
#     codes: where they ask for a trained or licensed person, call one
#   reviewed: 2026-11-25
#   since: 0.1.0
#   waivable: true
package rules.feasibility.hoist

import data.lib.judge

applies := judge.when_listed("build.lifting.lifts")

findings contains _borne(id) if some id in judge.each("build.lifting.lifts")

# None: the load itself was weighed, and lifting/crane_plate judges it.
_borne(id) := judge.unasked(_parts(id)) if {
	judge.is_none(_parts(id))
} else := judge.limit_max(
	judge.of(id, "figures.lifting.hook_load_of_parts.*"),
	judge.of(id, "build.lifting.lifts.*.crane_limit"),
)

_parts(id) := judge.of(id, "build.lifting.lifts.*.parts").path
