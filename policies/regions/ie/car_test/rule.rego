# METADATA
# title: test limits and report for the altered vehicle are known
# description: >-
#   The national car test gives effect to the European directive and can ask for a report
#   on modifications. What it asks after a change of engine, and whether engine or vehicle
#   sets the smoke limit, was not read.
# related_resources:
# - ref: https://www.irishstatutebook.ie/2017/en/si/0415.html
#   description: national car test regulations 2017
# custom:
#   level: note
#   hold: plan
#   basis: second-hand
#   source: >-
#     regulations of 2017 on the national car test, title and effect only; item of its
#     manual from a copy
#   outcomes:
#   - met
#   - unproven
#   - not applicable
#   remedy: >-
#     ask before the mounts are made: the engineer who writes the report wants to see them
#     open
#   question:
#     ask: >-
#       Is a report on modifications due for this change of engine, who may write it, and
#       which exhaust limits hold?
#     office: >-
#       Road Safety Authority, national car testing service; for a goods vehicle its
#       testing of commercial vehicles
#   reviewed: 2026-11-25
#   since: 0.1.0
#   waivable: true
package regions.ie.car_test

import data.lib.judge

applies := judge.when("build.engine.fuel", {"diesel", "petrol", "lpg", "cng"})
