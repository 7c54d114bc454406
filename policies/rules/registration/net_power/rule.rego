# METADATA
# title: power is given net
# description: >-
#   European papers give net power, as installed. Gross figures of older and of American
#   engines are higher for the same engine, so a change of power worked out from them
#   leads to the wrong side of a limit. A bench within 2 % of the declared power at rated
#   speed, or 4 % elsewhere, counts as the declared power (from memory).
# custom:
#   level: should
#   hold: plan
#   basis: memory
#   source: UN Regulation 85 on net power and its tolerances, from memory
#   outcomes:
#   - met
#   - not met
#   - unproven
#   - not applicable
#   remedy: >-
#     find the net figure in the maker's data of the European model, or have the power
#     taken on a bench
#   reviewed: 2026-11-25
#   since: 0.1.0
#   waivable: true
package rules.registration.net_power

import data.lib.judge

applies := judge.all_of([
	judge.in_region({"GB", "DE", "NL", "IE"}),
	judge.negate(judge.when("build.engine.fuel", {"electric"})),
])

findings contains judge.one_of("build.engine.rating_method", {"net"})
