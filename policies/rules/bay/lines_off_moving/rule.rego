# METADATA
# title: lines keep off moving parts
# description: >-
#   Hoses, pipes and wiring pass belts, fan, shafts and linkage at 25 mm or more, clipped on
#   both sides of the place. A line that swings into a belt is cut through in minutes, and
#   it is always the fuel line.
# custom:
#   level: should
#   hold: install
#   basis: common-practice
#   source: >-
#     common practice: an inch, the moving part as near as it comes
#   outcomes:
#   - met
#   - not met
#   - unproven
#   - not applicable
#   remedy: >-
#     reroute the line, or clip it on both sides of the place
#   caution: >-
#     stop the engine and take the key before reaching near belts and fan
#   reviewed: 2026-11-25
#   since: 0.1.0
#   waivable: true
package rules.bay.lines_off_moving

import data.lib.judge

applies := judge.when_listed("build.bay.lines")

findings contains judge.worst([
	judge.limit_min(judge.of(id, "build.bay.lines.*.gap"), "limits.bay.line_gap"),
	judge.one_of(judge.of(id, "build.bay.lines.*.secured"), {true}),
]) if {
	some id in judge.each("build.bay.lines")
}
