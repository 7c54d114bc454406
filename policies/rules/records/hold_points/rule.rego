# METADATA
# title: passed hold points have a date and a name
# description: >-
#   For every hold point that the build says it has passed there is a day and a person.
#   Without them nobody released the work.
# custom:
#   level: must
#   hold: plan
#   basis: own-record
#   source: the build's own record of hold points
#   outcomes:
#   - met
#   - not met
#   - unproven
#   - not applicable
#   remedy: >-
#     write the day and the person, or set the hold point back to the last one that was
#     released
#   reviewed: 2026-11-25
#   since: 0.1.0
#   waivable: true
package rules.records.hold_points

import data.lib.judge

applies := judge.when_there("build.build.hold")

findings contains judge.passed_before(hold) if {
	some hold in judge.passed
}
