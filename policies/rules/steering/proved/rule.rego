# METADATA
# title: the steering was proved at walking pace
# description: >-
#   The wheel was turned lock to lock on the ground with the engine running, the joints
#   watched, and then at walking pace. What binds or touches is found where nobody gets
#   hurt.
# custom:
#   level: must
#   hold: road-test
#   basis: own-record
#   source: >-
#     the build's own record of the day
#   outcomes:
#   - met
#   - not met
#   - unproven
#   - not applicable
#   reasons:
#     future: the day lies ahead, so nothing has been proved yet
#   remedy: >-
#     prove it: lock to lock on the ground, engine running, someone watching joints and
#     lines, then at walking pace off the road
#   caution: >-
#     off the public road, nobody in front or behind; keep hands out of the linkage while
#     the wheel turns
#   reviewed: 2026-11-25
#   since: 0.1.0
#   waivable: false
package rules.steering.proved

import data.lib.judge

findings contains judge.dated_at("build.steering.proved", "road-test")
