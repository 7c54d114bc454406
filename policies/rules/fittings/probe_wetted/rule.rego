# METADATA
# title: each probe stands deep enough in its liquid
# description: >-
#   Through boss and adapters the tip still stands in the liquid as far as its maker
#   asks. A sender lifted by a bushing sits in a pocket of air and reads cool until the
#   cylinder head has cracked.
# custom:
#   level: should
#   hold: install
#   basis: manufacturer
#   source: depth asked for by the sender's maker; lengths along the chain
#   outcomes:
#   - met
#   - not met
#   - unproven
#   - not applicable
#   remedy: >-
#     fit a longer probe, a shorter adapter, or move the sender to a port in the flow
#   caution: >-
#     let the system cool and lose its pressure before a fitting is opened; hot coolant
#     and oil scald
#   reviewed: 2026-11-25
#   since: 0.1.0
#   waivable: true
package rules.fittings.probe_wetted

import data.lib.judge

applies := judge.when_listed("build.fittings")

findings contains judge.limit_min(judge.of(id, "figures.fittings.wetted_margin.*"), "limits.fittings.wetted_margin") if {
	some id in judge.each("build.fittings")
	not judge.is_none(judge.of(id, "build.fittings.*.wetted_need").path)
}

findings contains judge.unasked(need) if {
	some id in judge.each("build.fittings")
	need := judge.of(id, "build.fittings.*.wetted_need")
	judge.is_none(need.path)
}
