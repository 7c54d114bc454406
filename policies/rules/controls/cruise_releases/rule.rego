# METADATA
# title: brake and clutch release the cruise control
# description: >-
#   Touching brake or clutch lets go of the cruise control that was carried over. Its
#   vacuum pot or cable on a governed diesel holds the lever open when the driver
#   brakes.
# custom:
#   level: should
#   hold: road-test
#   basis: common-practice
#   source: >-
#     common practice: try each pedal on a straight and empty road, or take the cruise
#     control out
#   outcomes:
#   - met
#   - not met
#   - unproven
#   - not applicable
#   remedy: wire both pedal switches into it, or take it out
#   caution: first drives with cruise control on closed ground, one hand on the stop
#   reviewed: 2026-11-25
#   since: 0.1.0
#   waivable: true
package rules.controls.cruise_releases

import data.lib.judge

applies := judge.when_there("build.controls.cruise_release")

findings contains judge.one_of("build.controls.cruise_release", {true})
