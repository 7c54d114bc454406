# METADATA
# title: the springs hold the vehicle near its old height
# description: >-
#   By the swap neither axle sinks or rises more than 25 mm on the springs it has. Who
#   learns it on the finished vehicle buys springs twice: the first pair for the engine, the
#   second when joint angles, caster and headlamps are wrong.
# custom:
#   level: should
#   hold: mockup
#   basis: common-practice
#   source: >-
#     common practice: 25 mm either way; the settling itself is that of a linear spring
#     (physics)
#   outcomes:
#   - met
#   - not met
#   - unproven
#   remedy: >-
#     order springs for the new load before joint angles are set, or take mass off that axle
#   reviewed: 2026-11-25
#   since: 0.1.0
#   waivable: true
package rules.mass.springs_settle

import data.lib.judge

findings contains judge.about("chassis.springs.front_rate", judge.within("figures.mass.sink_front", "limits.mass.rise", "limits.mass.sink"))

findings contains judge.about("chassis.springs.rear_rate", judge.within("figures.mass.sink_rear", "limits.mass.rise", "limits.mass.sink"))
