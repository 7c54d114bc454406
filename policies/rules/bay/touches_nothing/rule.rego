# METADATA
# title: nothing touches when engine and axle move
# description: >-
#   Where the engine comes near something, a gap is left with the engine rolled on its
#   mounts and the other part at the end of its travel: sump and axle at full bump, fan and
#   core, firewall, bonnet. A sump that clears the axle on stands is holed by it on the
#   first washboard.
# custom:
#   level: must
#   hold: mockup
#   basis: physics
#   source: >-
#     gap at rest less the roll of the engine, the give of its mounts and the travel of the
#     other part
#   needs_basis:
#     install: measured
#   outcomes:
#   - met
#   - not met
#   - unproven
#   - not applicable
#   remedy: >-
#     move the engine, change sump, fan or bump stops, or limit the roll with a strut,
#     before the mounts are welded
#   caution: >-
#     pry the engine over with a bar and the hook slack but on; nobody reaches between
#     engine and axle
#   reviewed: 2026-11-25
#   since: 0.1.0
#   waivable: true
package rules.bay.touches_nothing

import data.lib.judge

applies := judge.when_listed("build.bay.clearances")

findings contains judge.limit_min(judge.of(id, "figures.bell.clearance_left.*"), "limits.bay.gap_least") if {
	some id in judge.each("build.bay.clearances")
}
