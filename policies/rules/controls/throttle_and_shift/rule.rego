# METADATA
# title: throttle and shift lever move all the way
# description: >-
#   The pedal gives full throttle at the pump lever, and the shift lever and its boot clear
#   the tunnel in every gear with the engine tilted on its mounts. Half a throttle is found
#   on the first hill, a lever that fouls jumps out of gear there.
# custom:
#   level: should
#   hold: first-start
#   basis: common-practice
#   source: >-
#     common practice: try full travel by hand with the engine off
#   outcomes:
#   - met
#   - not met
#   - unproven
#   remedy: >-
#     set the linkage so that pedal and lever reach their stops together, and trim the
#     tunnel
#   reviewed: 2026-11-25
#   since: 0.1.0
#   waivable: true
package rules.controls.throttle_and_shift

import data.lib.judge

findings contains judge.one_of("build.controls.throttle_full", {true})

findings contains judge.one_of("build.controls.shift_clear", {true})
