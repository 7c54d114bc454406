# METADATA
# title: the starter turns only out of gear
# description: >-
#   The starter turns only with the clutch down or the selector in park or neutral. A diesel
#   starts at a touch and drives the vehicle through the shop door.
# custom:
#   level: should
#   hold: first-start
#   basis: common-practice
#   source: >-
#     common practice: keep the clutch or neutral switch of the chassis in the starter
#     circuit
#   outcomes:
#   - met
#   - not met
#   - unproven
#   remedy: >-
#     wire the clutch or neutral switch into the starter circuit
#   caution: >-
#     chock the wheels and keep everybody out of the way for the first start
#   reviewed: 2026-11-25
#   since: 0.1.0
#   waivable: true
package rules.controls.starter_interlock

import data.lib.judge

findings contains judge.one_of("build.transmission.starter_interlock", {true})
