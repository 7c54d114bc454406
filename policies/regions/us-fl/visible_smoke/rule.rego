# METADATA
# title: smoke of a diesel is gone within 5 s
# description: >-
#   A diesel is said not to be allowed to show smoke for more than five seconds on end,
#   acceleration, lugging and deceleration not counted. What still hangs in the air that
#   long after a snap of the throttle is no longer acceleration.
# related_resources:
# - ref: https://www.clickorlando.com/traffic/2022/11/28/visible-vehicle-emissions-can-legally-last-this-long-in-florida/
#   description: the clause on diesels as quoted by a state trooper
# - ref: https://lawserver.com/law/state/florida/regulations/florida_statutes_316-2935
#   description: Florida Statutes 316.2935, current as of 2024
# custom:
#   level: should
#   hold: inspection
#   basis: second-hand
#   source: >-
#     Florida Statutes 316.2935, the clause on diesels as quoted by a state trooper in
#     the news of 2022; its wording was not read in the statute
#   needs_basis:
#     inspection: measured
#   outcomes:
#   - met
#   - not met
#   - unproven
#   - not applicable
#   remedy: look at injection timing, nozzles, boost and full-load stop
#   caution: >-
#     exhaust gas goes outdoors, and nobody stands in line with fan or belts while the
#     throttle is snapped
#   reviewed: 2026-11-25
#   since: 0.1.0
#   waivable: true
package regions["us-fl"].visible_smoke

import data.lib.judge

applies := judge.when("build.engine.fuel", {"diesel"})

findings contains judge.limit_max("build.engine.smoke_plume", "limits.us_fl.smoke_plume")
