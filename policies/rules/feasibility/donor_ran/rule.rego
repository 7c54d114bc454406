# METADATA
# title: the donor was seen to run before it was paid for
# description: >-
#   The engine was started cold, or ran on a dynamometer, before money changed hands. A warm
#   engine hides worn rings and a weak pump; what was sold as a runner and was never started
#   turns into a rebuild on the buyer's stand.
# custom:
#   level: should
#   hold: plan
#   basis: common-practice
#   source: >-
#     common practice: cold start, blow-by at the filler, oil pressure hot, no water in the
#     oil
#   outcomes:
#   - met
#   - not met
#   - unproven
#   - not applicable
#   reasons:
#     paid-first: it was paid for before it was seen to run
#   remedy: >-
#     ask for a cold start, and come before it; else pay what an engine to be rebuilt is
#     worth, and plan the rebuild
#   caution: >-
#     a running engine on the ground rolls over: strap it to a stand, clear of the fan; fuel
#     and exhaust outdoors
#   reviewed: 2026-11-25
#   since: 0.1.0
#   waivable: true
package rules.feasibility.donor_ran

import data.lib.judge

applies := judge.when_there("build.engine.donor")

findings contains judge.one_of("build.engine.donor.test", {"cold-start", "dynamometer"})

findings contains judge.dated_at("build.engine.donor.tested", "plan")

findings contains judge.because("paid-first", judge.not_after("build.engine.donor.tested", "build.engine.donor.bought", "strip"))
