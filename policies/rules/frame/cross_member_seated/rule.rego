# METADATA
# title: a cross-member sat in place before it was drilled
# description: >-
#   The cross-member sat under the unit, mounts settled, on the day its holes were drilled
#   or before. Drilled by the drawing, its holes end up half a hole off, and the file makes
#   slots of them.
# custom:
#   level: should
#   hold: install
#   basis: common-practice
#   source: >-
#     common practice: seat it, mark through, then drill
#   outcomes:
#   - met
#   - not met
#   - unproven
#   - not applicable
#   reasons:
#     drilled-first: it was drilled before it sat in place
#   remedy: >-
#     seat it under the settled unit and see whether its bolts go in by hand; weld up and
#     drill again where they do not
#   caution: >-
#     disconnect batteries and control units before welding; drilling and welding of frames
#     is restricted by their makers and, in places, by law
#   reviewed: 2026-11-25
#   since: 0.1.0
#   waivable: true
package rules.frame.cross_member_seated

import data.lib.judge

applies := judge.when_listed("build.frame.cross_members")

findings contains judge.dated_at(_seated(id), "install") if some id in judge.each("build.frame.cross_members")

# None drilled: it sits on holes that were there, and no order is asked.
findings contains judge.because("drilled-first", judge.not_after(
	_seated(id),
	judge.of(id, "build.frame.cross_members.*.drilled"),
	"install",
)) if {
	some id in judge.each("build.frame.cross_members")
}

_seated(id) := judge.of(id, "build.frame.cross_members.*.seated")
