# METADATA
# title: parts from a donor can be traced to it
# description: >-
#   For each part that came off a donor a receipt or title shows the number it bears or
#   the vehicle it came from. Without it nobody can say what year the engine is of,
#   whether it was stolen, or which spare parts fit.
# custom:
#   level: should
#   hold: inspection
#   basis: own-record
#   source: >-
#     what an inspector asks: where is the engine from, and what shows it
#   outcomes:
#   - met
#   - not met
#   - unproven
#   - not applicable
#   remedy: >-
#     photograph the number on the part, put the receipt or title of the donor with the
#     evidence, and name it at the part
#   reviewed: 2026-11-25
#   since: 0.1.0
#   waivable: true
package rules.records.donor_parts

import data.lib.judge

applies := judge.when_listed("build.parts")

findings contains judge.supported(judge.of(id, "build.parts.*.donor_number")) if {
	some id in judge.each("build.parts")
	judge.holds(judge.of(id, "build.parts.*.origin"), "donor")
}

findings contains judge.present_at(judge.of(id, "build.parts.*.origin"), "inspection") if {
	some id in judge.each("build.parts")
}
