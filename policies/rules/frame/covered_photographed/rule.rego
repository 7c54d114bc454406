# METADATA
# title: hidden work was photographed before it was covered
# description: >-
#   What later parts hide, such as welds behind a plate or a sealed edge under a tunnel, has
#   a photograph on record from before it was covered, or the certifier has accepted it
#   unseen in writing. Nobody takes the cab off again to show it to an inspector.
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
#     unseen: it was covered, and no paper on record shows or accepts it
#   remedy: >-
#     photograph it before the cover goes on, and record the photograph as evidence; where
#     it is too late, open it up again, or ask the certifier to accept it in writing and
#     name that letter under accepted
#   reviewed: 2026-11-25
#   since: 0.1.0
#   waivable: true
package rules.frame.covered_photographed

import data.lib.judge

applies := judge.when_listed("build.frame.covered")

# Papers on record: a photograph, or else the written acceptance of the certifier.
findings contains judge.because("unseen", judge.one_of(_photograph(id), _papers)) if {
	some id in judge.each("build.frame.covered")
	not judge.holds(_state(id), "open")
	not _accepted_unseen(id)
}

findings contains judge.because("unseen", judge.one_of(_acceptance(id), _papers)) if {
	some id in judge.each("build.frame.covered")
	not judge.holds(_state(id), "open")
	_accepted_unseen(id)
}

# What lies open can still be photographed.
findings contains judge.one_of(_state(id), {"open"}) if {
	some id in judge.each("build.frame.covered")
	judge.holds(_state(id), "open")
}

_papers := judge.ids("build.evidence")

_state(id) := judge.of(id, "build.frame.covered.*.state")

_photograph(id) := judge.of(id, "build.frame.covered.*.photograph")

_acceptance(id) := judge.of(id, "build.frame.covered.*.accepted")

_accepted_unseen(id) if count(judge.lacks(_acceptance(id))) == 0
