# METADATA
# title: the exhaust brake is no narrower than the downpipe
# description: >-
#   The bore of the exhaust brake is at least that of the downpipe: a tight 3 in downpipe
#   steps up to 4 in at the brake. A brake narrower than the pipe throttles the engine when
#   it is open.
# custom:
#   level: should
#   hold: mockup
#   basis: common-practice
#   source: >-
#     common practice: a tight 3 in downpipe steps up to 4 in at the exhaust brake
#   outcomes:
#   - met
#   - not met
#   - unproven
#   - not applicable
#   remedy: >-
#     fit a brake of the larger bore, with a cone between pipe and brake
#   reviewed: 2026-11-25
#   since: 0.1.0
#   waivable: true
package rules.exhaust.bore_steps_up

import data.lib.judge

applies := judge.all_of([
	judge.when_there("build.exhaust.brake"),
	judge.unless("build.engine.fuel", {"petrol", "lpg", "cng", "electric"}),
])

findings contains judge.limit_min("build.exhaust.brake.bore", "build.exhaust.downpipe_bore")
