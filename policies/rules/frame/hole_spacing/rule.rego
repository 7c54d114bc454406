# METADATA
# title: holes leave enough of the frame web
# description: >-
#   A hole in the web leaves 38 mm of metal to the inside of the nearer flange and is no
#   larger than 19 mm. The nearer the flange, the more of the bending the hole cuts.
# related_resources:
# - ref: https://fordraptorforum.com/threads/gen-2-frame-welding.90698/post-1758240
#   description: excerpt of a body builder layout book on frame drilling
# custom:
#   level: should
#   hold: install
#   basis: handbook
#   source: >-
#     one maker's body builder guide, read as an excerpt on 2026-11-25; the guide for the
#     frame at hand overrides it
#   outcomes:
#   - met
#   - not met
#   - unproven
#   - not applicable
#   remedy: >-
#     move the hole towards the middle of the web, or use two smaller bolts
#   caution: >-
#     disconnect batteries and control units before welding; drilling and welding of frames
#     is restricted by their makers and, in places, by law
#   reviewed: 2026-11-25
#   since: 0.1.0
#   waivable: true
package rules.frame.hole_spacing

import data.lib.judge

applies := judge.when_listed("build.frame.holes")

findings contains judge.limit_min(judge.of(id, "build.frame.holes.*.edge"), "limits.frame.hole_edge") if {
	some id in judge.each("build.frame.holes")
}

findings contains judge.limit_max(judge.of(id, "build.frame.holes.*.diameter"), "limits.frame.hole_diameter") if {
	some id in judge.each("build.frame.holes")
}
