# METADATA
# title: each fuse carries its load without ageing
# description: >-
#   The fuse of each circuit is large enough for its steady load. A fuse that runs at its
#   rating ages and opens on a warm day, far from the workshop.
# custom:
#   level: should
#   hold: install
#   basis: common-practice
#   source: >-
#     common practice: fuse at 1.25 times the steady load
#   outcomes:
#   - met
#   - not met
#   - unproven
#   - not applicable
#   remedy: fit a larger fuse and check that the wire still suits it
#   reviewed: 2026-11-25
#   since: 0.1.0
#   waivable: true
package rules.electrical.fuse_carries_load

import data.lib.judge

applies := judge.when_listed("build.electrical.circuits")

findings contains judge.limit_min(
	judge.of(id, "figures.electrical.fuse_factor.*"),
	"limits.electrical.fuse_factor",
) if {
	some id in judge.each("build.electrical.circuits")
	not judge.is_none(judge.of(id, "build.electrical.circuits.*.fuse").path)
}

findings contains judge.unasked(fuse) if {
	some id in judge.each("build.electrical.circuits")
	fuse := judge.of(id, "build.electrical.circuits.*.fuse")
	judge.is_none(fuse.path)
}
