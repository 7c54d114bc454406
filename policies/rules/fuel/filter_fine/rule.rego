# METADATA
# title: the last filter is fine enough for the injection
# description: >-
#   The filter before the injection is no coarser than the injection lives with: some 10
#   µm for a mechanical pump, 4 µm for common rail. The chassis's own filter passes what
#   scores a pump, and a set of injectors costs more than the engine did.
# custom:
#   level: should
#   hold: install
#   basis: memory
#   source: >-
#     usual ratings of the last filter by kind of injection, from memory; the maker of
#     the engine has the last word
#   outcomes:
#   - met
#   - not met
#   - unproven
#   - not applicable
#   remedy: fit the filter that the maker of the engine names, after the lift pump
#   caution: >-
#     drain fuel cold, outdoors, away from sparks, with an extinguisher at hand; never
#     weld or cut a tank that has held fuel. Local fire codes apply
#   reviewed: 2026-11-25
#   since: 0.1.0
#   waivable: false
package rules.fuel.filter_fine

import data.lib.judge

applies := judge.when("build.engine.fuel", {"diesel"})

findings contains judge.about(
	"fuel.filter_rating",
	judge.limit_max("figures.fuel.filter_use", "limits.fuel.filter_use"),
)
