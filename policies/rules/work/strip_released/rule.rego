# METADATA
# title: the old engine stayed in until strip was passed
# description: >-
#   The old engine came out on the day the hold point strip was passed, or after it. Pulled
#   before, it takes corner weights, heights, slopes and the way of every hose with it.
# custom:
#   level: should
#   hold: mockup
#   basis: own-record
#   source: >-
#     the build's own record of hold points
#   outcomes:
#   - met
#   - not met
#   - unproven
#   reasons:
#     too-early: the old engine came out before the hold point strip was passed
#   remedy: >-
#     note under work what can no longer be measured on this vehicle, and measure it on an
#     untouched one of the same kind
#   reviewed: 2026-11-25
#   since: 0.1.0
#   waivable: true
package rules.work.strip_released

import data.lib.judge

findings contains judge.passed_before("strip")

findings contains judge.because("too-early", judge.not_after(
	"build.build.holds.strip.date",
	"build.outgoing_engine.date",
	"mockup",
))
