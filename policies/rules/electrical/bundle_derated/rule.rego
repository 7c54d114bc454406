# METADATA
# title: each fuse protects its wire in the bundle it lies in
# description: >-
#   The fuse is no larger than what the wire carries in its bundle, by the class of its
#   insulation. Wires in a full loom heat one another: a loom taped together after the
#   sum was done cooks from the middle.
# related_resources:
# - ref: http://federal.elaws.us/cfr/title-33/section-183.425
#   description: 33 CFR 183.425, conductors
# custom:
#   level: should
#   hold: install
#   basis: standard
#   source: >-
#     33 CFR 183.425 Table 5 with its factors for engine spaces; those for bundles as
#     its note 2 has them from 50 V upwards (written for boats; the published table used
#     here)
#   outcomes:
#   - met
#   - not met
#   - unproven
#   - not applicable
#   remedy: >-
#     take the heavy circuit out of the bundle, or fit a larger wire, or one of a higher
#     class
#   caution: >-
#     disconnect the battery before working on wiring; a short in battery cable starts
#     fires and burns hands
#   reviewed: 2026-11-25
#   since: 0.1.0
#   waivable: true
package rules.electrical.bundle_derated

import data.lib.judge

applies := judge.when_listed("build.electrical.circuits")

findings contains judge.limit_max(
	judge.of(id, "figures.electrical.ampacity_derated_use.*"),
	"limits.electrical.ampacity_derated_use",
) if {
	some id in judge.each("build.electrical.circuits")
	not judge.is_none(judge.of(id, "build.electrical.circuits.*.fuse").path)
}

# A circuit without a fuse is told by the rule on fuses.
findings contains judge.unasked(fuse) if {
	some id in judge.each("build.electrical.circuits")
	fuse := judge.of(id, "build.electrical.circuits.*.fuse")
	judge.is_none(fuse.path)
}
