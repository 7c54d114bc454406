# METADATA
# title: the inspection accepts the altered vehicle
# description: >-
#   A vehicle built with a catalytic converter must still have one, and the standards of
#   the inspection were about to follow the federal emission standards from 2024 or 2025.
#   What they ask of a diesel in a petrol chassis decides whether the vehicle can be put
#   back on the road.
# related_resources:
# - ref: https://drivesmartbc.ca/miscellaneous/too-much-exhaust-smoke
#   description: road-safety page, read on 2026-11-25
# custom:
#   level: note
#   hold: plan
#   basis: second-hand
#   source: >-
#     a road-safety page on exhaust smoke, before the change it announces; no rule on
#     engine swaps was found, which proves nothing
#   outcomes:
#   - met
#   - unproven
#   - not applicable
#   remedy: >-
#     ask a facility with both engines and the list of what stays before the catalyst is
#     taken off
#   question:
#     ask: >-
#       Does the inspection accept this engine in this vehicle, which emission equipment
#       must be there, and how is the engine recorded?
#     office: >-
#       designated inspection facility, and the Insurance Corporation of British Columbia
#   reviewed: 2026-11-25
#   since: 0.1.0
#   waivable: true
package regions["ca-bc"].inspection_standard

import data.lib.judge

applies := judge.any_of([
	judge.when_differs("build.outgoing_engine.family", "build.engine.family"),
	judge.when_differs("build.registration.title_fuel", "build.engine.fuel"),
])
