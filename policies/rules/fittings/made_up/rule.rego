# METADATA
# title: each tapered joint is made up neither slack nor too far
# description: >-
#   A tapered pipe thread is turned one and a half to three turns beyond hand-tight,
#   above 1 in one to two and a half. Slack it seeps when hot; forced it splits the
#   aluminium boss of a housing that is no longer made.
# custom:
#   level: should
#   hold: install
#   basis: common-practice
#   source: >-
#     common practice: 1.5 to 3 turns beyond the hand-tight engagement of ASME B1.20.1,
#     1 to 2.5 above 1 in
#   outcomes:
#   - met
#   - not met
#   - unproven
#   - not applicable
#   remedy: >-
#     make the joint up afresh with sealant and count the turns; where the end is
#     reached too soon, look at the threads
#   caution: >-
#     let the system cool and lose its pressure before a fitting is opened; hot coolant
#     and oil scald
#   reviewed: 2026-11-25
#   since: 0.1.0
#   waivable: true
package rules.fittings.made_up

import data.lib.judge

applies := judge.when_listed("build.fittings")

# Parallel threads and cones are tightened by torque.
_tapered := {"thread", "dry thread"}

_sealed(id) := judge.one_of(judge.of(id, "build.fittings.*.joints.*.outer.seal"), _tapered).outcome

_turns(id) := judge.of(id, "figures.fittings.wrench_turns.*.*")

_large(id) := judge.when_min(judge.of(id, "build.fittings.*.joints.*.outer.major"), "limits.fittings.large_thread").state

findings contains judge.within(_turns(id), "limits.fittings.turns_low", "limits.fittings.turns_high") if {
	some id in judge.each("build.fittings.*.joints")
	_sealed(id) != "not met"
	_large(id) != "yes"
}

findings contains judge.within(_turns(id), "limits.fittings.turns_low_large", "limits.fittings.turns_high_large") if {
	some id in judge.each("build.fittings.*.joints")
	_sealed(id) != "not met"
	_large(id) == "yes"
}

findings contains judge.unasked(judge.of(id, "build.fittings.*.joints.*.seal")) if {
	some id in judge.each("build.fittings.*.joints")
	_sealed(id) == "not met"
}

findings contains finding if some finding in judge.unlisted("build.fittings.*.joints")
