# METADATA
# title: the road test was long enough to find faults
# description: >-
#   The first drives add up to some 50 km, with motorway and hill in them; 15 km for a
#   farm vehicle, laden, over the ground that it works on. What shakes loose, chafes
#   through or boils does so after an hour, and then it is the owner who walks.
# custom:
#   level: should
#   hold: inspection
#   basis: common-practice
#   source: >-
#     common practice: an hour of mixed road, some 50 km, before anything is called
#     finished; an hour at work on a farm
#   outcomes:
#   - met
#   - not met
#   - unproven
#   remedy: >-
#     drive it laden and unladen, with motorway and hill, and write down the distance
#   caution: >-
#     take an extinguisher, chocks and a second person; turn back at the first smell of
#     fuel or burning
#   reviewed: 2026-11-25
#   since: 0.1.0
#   waivable: true
package rules.running.road_test_long_enough

import data.lib.judge

_on_the_road := judge.unless("build.registration.use", {"farm"}).state

findings contains judge.limit_min("build.road_test.distance", "limits.running.road_test") if _on_the_road == "yes"

findings contains judge.limit_min("build.road_test.distance", "limits.running.farm_test") if _on_the_road == "no"
