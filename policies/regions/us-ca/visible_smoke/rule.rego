# METADATA
# title: a truck above 14,000 lb shows no visible smoke
# description: >-
#   A vehicle above 14,000 lb that does not burn petrol may not be operated with visible
#   smoke, except while a particulate filter regenerates.
# related_resources:
# - ref: https://self-law.org/code/ca/vehicle-code/27153
#   description: Vehicle Code 27153
# custom:
#   level: must
#   hold: inspection
#   basis: statute
#   source: Vehicle Code 27153(b)
#   needs_basis:
#     inspection: measured
#   outcomes:
#   - met
#   - not met
#   - unproven
#   - not applicable
#   remedy: >-
#     repair what makes the smoke before the vehicle goes on the road; a citation leaves 45
#     days
#   reviewed: 2026-11-25
#   since: 0.1.0
#   waivable: true
package regions["us-ca"].visible_smoke

import data.lib.judge

applies := judge.all_of([
	judge.when("build.engine.fuel", {"diesel", "lpg", "cng"}),
	judge.negate(judge.when_max("build.chassis.ratings.gross", "limits.us_ca.light_gross")),
])

findings contains judge.limit_max("build.engine.smoke_plume", "limits.us_ca.heavy_smoke_plume")
