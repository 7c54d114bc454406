# METADATA
# title: each joint is sealed the way its thread needs
# description: >-
#   Taper threads are made up with sealant, parallel ones on a washer or ring, flares on
#   their cone. Tape on a parallel thread stops nothing, and a washer under a taper never
#   seats.
# custom:
#   level: should
#   hold: install
#   basis: standard
#   source: >-
#     ASME B1.20.1, ISO 228, ISO 7 and SAE J514 as tabled in internal/thread; the table of
#     sealing means is common practice
#   outcomes:
#   - met
#   - not met
#   - unproven
#   - not applicable
#   remedy: make the joint up again with one of the seals named
#   reviewed: 2026-11-25
#   since: 0.1.0
#   waivable: true
package rules.fittings.seal_suits_thread

import data.lib.judge

applies := judge.when_listed("build.fittings")

# How each way of sealing is made up.
_means := {
	"thread": {"tape", "paste"},
	"dry thread": {"dry-seal", "paste"},
	"face": {"bonded-washer", "crush-washer", "o-ring"},
	"o-ring boss": {"o-ring"},
	"30° cone": {"cone"},
	"37° cone": {"cone"},
	"45° cone": {"cone"},
}

_threads(id) := [
	judge.of(id, "build.fittings.*.joints.*.inner.seal"),
	judge.of(id, "build.fittings.*.joints.*.outer.seal"),
]

# The thread that decides how a joint is made up: while one of the two is not
# known, that one; else one that needs sealant, because nothing else closes it,
# even against a thread that seals by itself; else the outer one.
_deciding(id) := unknown[0] if {
	unknown := [t | some t in _threads(id); count(judge.lacks(t)) > 0]
} else := sealed[0] if {
	sealed := [t | some t in _threads(id); judge.holds(t, "thread")]
} else := _threads(id)[1]

findings contains judge.allowed(
	judge.of(id, "build.fittings.*.joints.*.seal"),
	_deciding(id),
	_means,
) if {
	some id in judge.each("build.fittings.*.joints")
}

findings contains finding if some finding in judge.unlisted("build.fittings.*.joints")
