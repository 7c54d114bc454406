# METADATA
# title: the mounts keep the shaking of idle out of the cab
# description: >-
#   At idle no more than a fifth of what the engine shakes at its firing frequency reaches
#   the frame. Stiff mounts near resonance make it shake harder than a bolted engine;
#   brackets and radiator necks crack within the year.
# custom:
#   level: should
#   hold: install
#   basis: common-practice
#   source: >-
#     common practice: four fifths kept out; a single mass on mounts with the damping of
#     rubber
#   outcomes:
#   - met
#   - not met
#   - unproven
#   - not applicable
#   remedy: >-
#     choose softer mounts, or let the engine idle a little faster where its maker allows;
#     measure how far the mounts settle when the hook lets go
#   reviewed: 2026-11-25
#   since: 0.1.0
#   waivable: true
package rules.frame.idle_isolation

import data.lib.judge

applies := judge.negate(judge.when("build.frame.mounts.kind", {"original"}))

# By how far they settled where that was measured, else by their stiffness.
findings contains judge.about(
	"frame.mounts.settled",
	judge.limit_max("figures.mounts.idle_transmission_settled", "limits.frame.idle_transmission"),
) if {
	_measured
}

findings contains judge.about(
	"frame.mounts.engine_rate",
	judge.limit_max("figures.mounts.idle_transmission", "limits.frame.idle_transmission"),
) if {
	not _measured
}

_measured if count(judge.lacks(judge.ref("build.frame.mounts.settled"))) == 0
