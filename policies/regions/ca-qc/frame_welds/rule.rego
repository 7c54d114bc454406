# METADATA
# title: nothing is welded on the frame
# description: >-
#   Welding on the chassis or changing it is among the examples of what is prohibited
#   without approval. Engine mounts are the usual reason for it, and the inspection centre
#   photographs them.
# related_resources:
# - ref: https://saaq.gouv.qc.ca/en/road-safety/client-groups/young-drivers/modified-vehicles
#   description: SAAQ, read on 2026-11-25
# custom:
#   level: should
#   hold: plan
#   basis: agency-guidance
#   source: SAAQ page for young drivers on modified vehicles, cars and motorcycles
#   outcomes:
#   - met
#   - not met
#   - unproven
#   remedy: >-
#     bolt the brackets to holes the frame already has, or have the approval and the
#     engineer first
#   caution: >-
#     welding near fuel lines, tank and wiring needs them out of the way and a fire watch;
#     frames of high-strength steel are not welded at all
#   reviewed: 2026-11-25
#   since: 0.1.0
#   waivable: true
package regions["ca-qc"].frame_welds

import data.lib.judge

findings contains judge.at_most_items("build.frame.welds", "limits.ca_qc.frame_welds")
