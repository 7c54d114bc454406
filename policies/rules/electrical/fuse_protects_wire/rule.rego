# METADATA
# title: each fuse gives way before its wire does
# description: >-
#   The fuse of each circuit is no larger than what its wire carries where it lies. A wire
#   smaller than its fuse is the fuse, and it burns inside the loom.
# related_resources:
# - ref: http://federal.elaws.us/cfr/title-33/section-183.425
#   description: 33 CFR 183.425, conductors
# custom:
#   level: must
#   hold: install
#   basis: standard
#   source: >-
#     33 CFR 183.425 Table 5, 105 °C insulation (written for boats; the published table used
#     here), read on 2026-11-25
#   outcomes:
#   - met
#   - not met
#   - unproven
#   - not applicable
#   reasons:
#     unfused: the circuit has no fuse or breaker at all, so the wire itself is the fuse
#   remedy: fit a smaller fuse, or a larger wire
#   caution: >-
#     disconnect the battery before working on wiring; a short in battery cable starts fires
#     and burns hands
#   reviewed: 2026-11-25
#   since: 0.1.0
#   waivable: true
package rules.electrical.fuse_protects_wire

import data.lib.judge

applies := judge.when_listed("build.electrical.circuits")

findings contains judge.limit_max(
	judge.of(id, "figures.electrical.ampacity_use.*"),
	"limits.electrical.fuse_to_wire",
) if {
	some id in judge.each("build.electrical.circuits")
	not judge.is_none(judge.of(id, "build.electrical.circuits.*.fuse").path)
}

# Without a fuse nothing protects the wire; only the starter's own cable goes without.
findings contains judge.because("unfused", judge.present_at(fuse, "install")) if {
	some id in judge.each("build.electrical.circuits")
	fuse := judge.of(id, "build.electrical.circuits.*.fuse")
	judge.is_none(fuse.path)
}
