# METADATA
# title: the throttle comes back to idle at once
# description: >-
#   Let go at full throttle, the lever rests at idle within a second, in two above
#   10,000 lb. A cable kinked round the new engine comes back, but late: every gear
#   change is made against a racing engine.
# custom:
#   level: should
#   hold: first-start
#   basis: memory
#   source: >-
#     49 CFR 571.124 S5.3 from memory, 1 s up to 10,000 lb and 2 s above; the rules of
#     the region have the last word
#   outcomes:
#   - met
#   - not met
#   - unproven
#   remedy: >-
#     lead the cable in wide bends clear of heat, renew it, and fit stronger springs at
#     the lever
#   caution: >-
#     try the return by hand, engine off, at full throttle, before every first start of
#     a new linkage
#   reviewed: 2026-11-25
#   since: 0.1.0
#   waivable: true
package rules.controls.idle_return

import data.lib.judge

findings contains judge.limit_max_from(
	"build.controls.idle_return",
	"build.chassis.ratings.gross",
	[{"from": "limits.controls.heavy", "limit": "limits.controls.idle_return_heavy"}],
	"limits.controls.idle_return",
)
