# METADATA
# title: no hole is drilled in a frame flange
# description: >-
#   Holes lie in the web of the frame, never in its upper or lower flange. The flange
#   carries the bending; a crack starts at the hole and runs across the rail.
# related_resources:
# - ref: https://fordraptorforum.com/threads/gen-2-frame-welding.90698/post-1758240
#   description: excerpt of a body builder layout book on frame drilling
# - ref: https://charm.li/GMC/2000/C%206500%20TopKick%20V8-7.4L%20VIN%20D/Repair%20and%20Diagnosis/Body%20and%20Frame/Frame/Service%20Precautions/
#   description: another maker on frame drilling
# custom:
#   level: should
#   hold: install
#   basis: handbook
#   source: >-
#     body builder guides of two makers, read as excerpts on 2026-11-25: no holes in the
#     flanges
#   outcomes:
#   - met
#   - not met
#   - unproven
#   - not applicable
#   remedy: >-
#     move the bracket to the web, and ask the maker of the frame how a hole in the flange
#     is repaired
#   caution: >-
#     disconnect batteries and control units before welding; drilling and welding of frames
#     is restricted by their makers and, in places, by law
#   reviewed: 2026-11-25
#   since: 0.1.0
#   waivable: true
package rules.frame.no_flange_holes

import data.lib.judge

applies := judge.when_listed("build.frame.holes")

findings contains judge.one_of(judge.of(id, "build.frame.holes.*.place"), {"web"}) if {
	some id in judge.each("build.frame.holes")
}
