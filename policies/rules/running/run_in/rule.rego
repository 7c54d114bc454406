# METADATA
# title: a fresh engine has its first oil change planned
# description: >-
#   A rebuilt or new engine gets its first oil and filter within 1000 km, as its run-in
#   plan says. The filings of the first hours go through the turbocharger until somebody
#   lets them out.
# custom:
#   level: should
#   hold: first-start
#   basis: common-practice
#   source: >-
#     common practice: 500 to 1000 km; the plan of the engine builder or maker goes
#     first
#   outcomes:
#   - met
#   - not met
#   - unproven
#   - not applicable
#   remedy: >-
#     write the first oil change into the plan, and load the engine as the builder asks
#     until then
#   reviewed: 2026-11-25
#   since: 0.1.0
#   waivable: true
package rules.running.run_in

import data.lib.judge

applies := judge.when("build.engine.history", {"rebuilt", "new"})

findings contains judge.limit_max("build.first_start.oil_change", "limits.running.first_oil_change")
