# METADATA
# title: the standard for the changed engine is known
# description: >-
#   The inspection looks for emission controls and takes vehicles with diagnostics
#   through them. Which year, which standard and which controls count after an engine
#   change was not visible in the regulation.
# related_resources:
# - ref: https://law.lis.virginia.gov/admincodefull/title9/agency5/chapter91/partVI
#   description: 9VAC5-91 part VI, November 2024
# custom:
#   level: note
#   hold: plan
#   basis: memory
#   source: >-
#     9VAC5-91 part VI was read for its steps; a clause on engine changes was not found
#     in it
#   outcomes:
#   - met
#   - unproven
#   - not applicable
#   remedy: >-
#     ask with the labels of both engines at hand, before the engine with the
#     diagnostics is gone
#   question:
#     ask: >-
#       By which model year and standard is this vehicle inspected with this engine, and
#       which emission controls are looked for?
#     office: Virginia Department of Environmental Quality, vehicle emissions
#   reviewed: 2026-11-25
#   since: 0.1.0
#   waivable: true
package regions["us-va"].engine_change

import data.lib.judge

_localities := {
	"Arlington", "Fairfax", "Loudoun", "Prince William", "Stafford",
	"Alexandria", "Falls Church", "Manassas", "Manassas Park",
}

applies := judge.all_of([
	judge.when_zone(_localities),
	judge.when_differs("build.outgoing_engine.family", "build.engine.family"),
])
