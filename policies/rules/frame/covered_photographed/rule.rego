# METADATA
# title: hidden work was photographed before it was covered
# description: >-
#   What later parts hide, such as welds behind a plate or a sealed edge under a tunnel, has
#   a photograph from before it was covered. Nobody takes the cab off again to show it to an
#   inspector.
# custom:
#   level: should
#   hold: install
#   basis: own-record
#   source: >-
#     what the hold point install is for: work that can be seen now and not later
#   outcomes:
#   - met
#   - not met
#   - unproven
#   - not applicable
#   reasons:
#     unseen: it was covered without a photograph, so nobody can see it any more
#   remedy: >-
#     photograph it before the cover goes on, and record the photograph as evidence
#   reviewed: 2026-11-25
#   since: 0.1.0
#   waivable: true
package rules.frame.covered_photographed

import data.lib.judge

applies := judge.when_listed("build.frame.covered")

findings contains judge.because("unseen", judge.present_at(photograph, "install")) if {
	some id in judge.each("build.frame.covered")
	photograph := judge.of(id, "build.frame.covered.*.photograph")
	not judge.holds(judge.of(id, "build.frame.covered.*.state"), "open")
}

# What lies open can still be photographed.
findings contains judge.one_of(judge.of(id, "build.frame.covered.*.state"), {"open"}) if {
	some id in judge.each("build.frame.covered")
	judge.holds(judge.of(id, "build.frame.covered.*.state"), "open")
}
