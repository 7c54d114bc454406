# METADATA
# title: cut openings have no bare edge
# description: >-
#   Every opening cut into floor, tunnel or dash panel has a grommet, edging or a rolled
#   edge. A sheet edge is a saw: it takes a year to get through a loom, and then it is a
#   fire.
# custom:
#   level: should
#   hold: install
#   basis: common-practice
#   source: >-
#     common practice: grommet or edging before anything is led through
#   outcomes:
#   - met
#   - not met
#   - unproven
#   - not applicable
#   remedy: >-
#     fit a grommet or edging while the opening can still be reached from both sides
#   caution: >-
#     cut edges and chips: gloves and eye protection; look for lines behind the panel before
#     it is cut
#   reviewed: 2026-11-25
#   since: 0.1.0
#   waivable: true
package rules.frame.openings_edged

import data.lib.judge

applies := judge.when_listed("build.frame.openings")

findings contains judge.one_of(judge.of(id, "build.frame.openings.*.edge"), {"grommet", "edging", "rolled"}) if {
	some id in judge.each("build.frame.openings")
}
