# METADATA
# title: the clutch holds the engine with a reserve
# description: >-
#   The clutch, worn in, slips only at 1.3 times the peak torque of the engine. A clutch of
#   the old engine holds for the test drive and slips on the first loaded grade, with the
#   gearbox to come out again.
# custom:
#   level: should
#   hold: mockup
#   basis: common-practice
#   source: >-
#     common practice: 1.3 for a diesel; friction clutch under uniform wear; clamp force by
#     its maker
#   outcomes:
#   - met
#   - not met
#   - unproven
#   - not applicable
#   remedy: >-
#     fit a pressure plate with more clamp force, a larger disc or a lining of higher
#     friction while the bell is open
#   reviewed: 2026-11-25
#   since: 0.1.0
#   waivable: true
package rules.torque.clutch_reserve

import data.lib.judge

applies := judge.all_of([
	judge.when_there("build.transmission.clutch"),
	judge.unless("build.transmission.type", {"automatic"}),
])

findings contains judge.about(
	"transmission.clutch.clamp_force",
	judge.limit_max("figures.torque.clutch_use", "limits.torque.clutch_reserve"),
)
