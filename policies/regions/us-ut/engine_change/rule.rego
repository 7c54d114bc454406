# METADATA
# title: the county accepts the changed engine
# description: >-
#   The counties write the inspection themselves, and what they say of changed engines
#   was not readable. Utah county is said to want every change of the powertrain
#   approved by the federal agency, or the vehicle returned to its original
#   configuration.
# custom:
#   level: note
#   hold: plan
#   basis: memory
#   source: >-
#     Utah county by a news report of 13 December 2018; Salt Lake county regulation 22A
#     and the others were not read at the paragraph on engines
#   outcomes:
#   - met
#   - unproven
#   - not applicable
#   remedy: ask the county's technical centre with the labels of both engines at hand
#   question:
#     ask: >-
#       Under which conditions does the county's inspection accept this engine in this
#       chassis, and by which model year?
#     office: health department of the county, vehicle emissions
#   reviewed: 2026-11-25
#   since: 0.1.0
#   waivable: true
package regions["us-ut"].engine_change

import data.lib.judge

applies := judge.all_of([
	judge.when_zone({"Cache", "Davis", "Salt Lake", "Utah", "Weber"}),
	judge.when_min("build.chassis.model_year", "limits.us_ut.tested_year"),
	judge.when_differs("build.outgoing_engine.family", "build.engine.family"),
])
