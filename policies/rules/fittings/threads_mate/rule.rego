# METADATA
# title: the threads of each joint belong together
# description: >-
#   In every chain from a port to a sender or hose each part has the thread of the part it
#   screws into, of the other sex. Pipe threads of different standards start by hand, feel
#   right, and leak oil or coolant when hot.
# custom:
#   level: must
#   hold: install
#   basis: standard
#   source: >-
#     ASME B1.20.1 (NPT), ISO 228 and ISO 7 (G, R, Rc), SAE J514, J512 and J1926, ISO 6149,
#     DIN 3852, as tabled in internal/thread
#   outcomes:
#   - met
#   - not met
#   - unproven
#   - not applicable
#   reasons:
#     lookalike: they start into one another by hand and do not seal
#     misfit: they do not fit one another
#   remedy: put the right adapter between the two, or fit a sender with the thread of the port
#   caution: >-
#     let the system cool and lose its pressure before a fitting is opened; hot coolant and
#     oil scald
#   reviewed: 2026-11-25
#   since: 0.1.0
#   waivable: true
package rules.fittings.threads_mate

import data.lib.judge

applies := judge.when_listed("build.fittings")

findings contains judge.because("lookalike", joint) if {
	some id in judge.each("build.fittings.*.joints")
	judge.holds(judge.of(id, "build.fittings.*.joints.*.lookalike"), true)
	joint := judge.one_of(judge.of(id, "build.fittings.*.joints.*.mates"), {true})
}

findings contains judge.because("misfit", joint) if {
	some id in judge.each("build.fittings.*.joints")
	not judge.holds(judge.of(id, "build.fittings.*.joints.*.lookalike"), true)
	joint := judge.one_of(judge.of(id, "build.fittings.*.joints.*.mates"), {true})
}

findings contains finding if some finding in judge.unlisted("build.fittings.*.joints")
