# METADATA
# title: smoke after a snap of the throttle is gone in 3 s
# description: >-
#   At the check the throttle is snapped, the first snap not counted, and a plume that
#   lingers fails. The statute is stricter in words: any visible smoke from tailpipe or
#   crankcase is a failure.
# related_resources:
# - ref: https://self-law.org/code/ca/health-and-safety-code/44012-1
#   description: Health and Safety Code 44012.1
# custom:
#   level: should
#   hold: inspection
#   basis: second-hand
#   source: >-
#     reference notes on the visible smoke test of the Smog Check manual, 3 s; Health and
#     Safety Code 44012.1(a) was read
#   needs_basis:
#     inspection: measured
#   outcomes:
#   - met
#   - not met
#   - unproven
#   - not applicable
#   remedy: look at injection timing, nozzles, boost and full-load stop before the check
#   caution: >-
#     exhaust goes outdoors, and nobody stands in line with fan or belts while the throttle
#     is snapped
#   reviewed: 2026-11-25
#   since: 0.1.0
#   waivable: true
package regions["us-ca"].smoke_plume

import data.lib.judge

applies := judge.all_of([
	judge.when("build.engine.fuel", {"diesel"}),
	judge.when_min("build.chassis.model_year", "limits.us_ca.diesel_smog_check_year"),
	judge.when_max("build.chassis.ratings.gross", "limits.us_ca.referee_gross"),
])

findings contains judge.limit_max("build.engine.smoke_plume", "limits.us_ca.smoke_plume")
