# METADATA
# title: each fault found before has a work item
# description: >-
#   Every fault that was found before the work began names the work item that sees to it.
#   Otherwise it comes back with the finished vehicle, as something that the swap broke.
# custom:
#   level: should
#   hold: strip
#   basis: own-record
#   source: >-
#     the build's own list of faults and of work
#   outcomes:
#   - met
#   - not met
#   - unproven
#   - not applicable
#   remedy: >-
#     add a work item with the hold point it must be closed by, and name it at the fault
#   reviewed: 2026-11-25
#   since: 0.1.0
#   waivable: true
package rules.baseline.faults_planned

import data.lib.judge

applies := judge.when_listed("build.baseline.faults")

# Where the work is not listed nothing can be examined, and that proves nothing.
findings contains judge.one_of(judge.of(id, "build.baseline.faults.*.work"), judge.ids("build.work")) if {
	some id in judge.each("build.baseline.faults")
	count(judge.lacks(judge.ref("build.work"))) == 0
}
