# METADATA
# title: what was found wet after the drive is dry
# description: >-
#   The hot vehicle was looked over from below after the drive, and each leak that was
#   found is stopped. Fuel on a hot manifold burns the vehicle; oil on a clutch or a
#   brake shows at the inspection.
# custom:
#   level: must
#   hold: inspection
#   basis: own-record
#   source: >-
#     what the hold point inspection is for: nothing is shown to an authority that drips
#   outcomes:
#   - met
#   - not met
#   - unproven
#   - not applicable
#   reasons:
#     future: the day lies ahead, so it still leaks
#   remedy: >-
#     stop the leak, clean and dry the place, drive again, and write down the day; list
#     none where all was dry
#   caution: >-
#     never feel for a leak of injection fuel with the hand: the jet goes through the
#     skin. Chock the wheels, keep everybody out of the line of belts, fan and wheels,
#     and run the engine where its exhaust leaves the building
#   reviewed: 2026-11-25
#   since: 0.1.0
#   waivable: false
package rules.running.leaks_stopped

import data.lib.judge

applies := judge.when_listed("build.road_test.leaks")

findings contains judge.dated_at(judge.of(id, "build.road_test.leaks.*.stopped"), "inspection") if {
	some id in judge.each("build.road_test.leaks")
}
