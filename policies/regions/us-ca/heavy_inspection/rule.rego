# METADATA
# title: a truck above 14,000 lb is in the state inspection
# description: >-
#   Vehicles above 14,000 lb that do not burn petrol have an inspection and fee of their
#   own in place of the periodic check. The model year of the engine, from its label, is
#   said to choose the test.
# related_resources:
# - ref: https://lexace.ai/us/statute/california/hsc-44152
#   description: Health and Safety Code 44152
# custom:
#   level: note
#   hold: inspection
#   basis: second-hand
#   source: >-
#     Health and Safety Code 44152 for the scope; reference notes on 13 CCR 2195 to 2199,
#     which were not read
#   outcomes:
#   - met
#   - unproven
#   - not applicable
#   remedy: report the vehicle with its new engine, with a photograph of the engine label
#   question:
#     ask: >-
#       Is the vehicle reported with its new engine, and which test, how often, applies to
#       it?
#     office: California Air Resources Board
#   reviewed: 2026-11-25
#   since: 0.1.0
#   waivable: true
package regions["us-ca"].heavy_inspection

import data.lib.judge

applies := judge.all_of([
	judge.when("build.engine.fuel", {"diesel", "lpg", "cng"}),
	judge.negate(judge.when_max("build.chassis.ratings.gross", "limits.us_ca.light_gross")),
])
