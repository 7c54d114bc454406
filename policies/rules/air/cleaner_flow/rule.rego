# METADATA
# title: the air cleaner is rated for the engine with a reserve
# description: >-
#   The air of the engine at rated power is at most 85 per cent of what the air cleaner is
#   rated for. The cleaner of the petrol engine strangles a turbo-diesel, clogs in a third of
#   the time, and its element is sucked through.
# custom:
#   level: should
#   hold: mockup
#   basis: common-practice
#   source: >-
#     common practice: an air cleaner rated for 1.15 to 1.25 times the engine's air
#   outcomes:
#   - met
#   - not met
#   - unproven
#   - not applicable
#   remedy: >-
#     choose an air cleaner of a larger rated flow while the bay is still open, or two side
#     by side
#   reviewed: 2026-11-25
#   since: 0.1.0
#   waivable: true
package rules.air.cleaner_flow

import data.lib.judge

applies := judge.all_of([
	judge.when("build.engine.fuel", {"diesel", "petrol", "lpg", "cng"}),
	judge.when_there("build.intake.cleaner_flow"),
])

findings contains judge.about(
	"intake.cleaner_flow",
	judge.limit_max("figures.air.cleaner_use", "limits.air.cleaner_use"),
)
