# METADATA
# title: holes in the frame keep three diameters apart
# description: >-
#   From centre to centre, like holes stand three diameters apart. Holes in a row are a
#   perforation: the web tears from one to the next.
# custom:
#   level: should
#   hold: install
#   basis: common-practice
#   source: >-
#     common practice: three diameters; EN 1993-1-8 table 3.3 has 2.2 as the least
#   outcomes:
#   - met
#   - not met
#   - unproven
#   - not applicable
#   remedy: >-
#     space the holes wider, or close the old one before a new one is drilled beside it as
#     the maker of the frame says
#   caution: >-
#     disconnect batteries and control units before welding; drilling and welding of frames
#     is restricted by their makers and, in places, by law
#   reviewed: 2026-11-25
#   since: 0.1.0
#   waivable: true
package rules.frame.holes_apart

import data.lib.judge

applies := judge.when_listed("build.frame.holes")

findings contains _apart(id) if some id in judge.each("build.frame.holes")

# None: no other hole is near.
_apart(id) := judge.unasked(_gap(id)) if {
	judge.is_none(_gap(id))
} else := judge.limit_min(judge.of(id, "figures.fasteners.hole_distance.*"), "limits.frame.hole_distance")

_gap(id) := judge.of(id, "build.frame.holes.*.gap").path
