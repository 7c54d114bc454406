# METADATA
# title: what passes through a chain finds its bore
# description: >-
#   The narrowest part of a chain is as wide as sender, gauge line or hose needs. A
#   bushing with a pin-hole damps an oil gauge until it shows pressure that is no longer
#   there, and a drain through it floods a turbine.
# custom:
#   level: should
#   hold: install
#   basis: physics
#   source: >-
#     a chain is as wide as its narrowest part; bore needed by the maker of sender or
#     hose
#   outcomes:
#   - met
#   - not met
#   - unproven
#   - not applicable
#   remedy: fit an adapter of larger bore, or move the sender to a wider port
#   caution: >-
#     let the system cool and lose its pressure before a fitting is opened; hot coolant
#     and oil scald
#   reviewed: 2026-11-25
#   since: 0.1.0
#   waivable: true
package rules.fittings.bore_left

import data.lib.judge

applies := judge.when_listed("build.fittings")

findings contains judge.limit_max(judge.of(id, "figures.fittings.bore_use.*"), "limits.fittings.bore_use") if {
	some id in judge.each("build.fittings")
	not judge.is_none(judge.of(id, "build.fittings.*.bore_need").path)
}

findings contains judge.unasked(need) if {
	some id in judge.each("build.fittings")
	need := judge.of(id, "build.fittings.*.bore_need")
	judge.is_none(need.path)
}
