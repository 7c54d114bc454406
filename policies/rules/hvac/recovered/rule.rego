# METADATA
# title: the refrigerant was recovered, not let out
# description: >-
#   Before a line of the refrigerant circuit was opened, somebody certified for it drew the
#   charge into a bottle. It is an offence in many places to let it out, and the hose that
#   is cracked open under pressure freezes the hand that holds it.
# custom:
#   level: should
#   hold: strip
#   basis: common-practice
#   source: >-
#     common practice; where federal law of the United States asks it of a shop, its own
#     rule is judged instead
#   outcomes:
#   - met
#   - not met
#   - unproven
#   - not applicable
#   remedy: >-
#     have the charge recovered by a certified technician before a line is opened, and keep
#     the receipt
#   caution: >-
#     refrigerant blinds, freezes and displaces air: goggles, gloves, open doors and no
#     flame; only a certified technician recovers and charges it, as local law says
#   reviewed: 2026-11-27
#   since: 0.1.0
#   waivable: true
package rules.hvac.recovered

import data.lib.judge

applies := judge.all_of([
	judge.when("build.hvac.refrigerant_opened", {true}),
	judge.any_of([
		judge.negate(judge.in_region({"US"})),
		judge.unless("build.registration.installer", {"shop"}),
	]),
])

findings contains judge.present_at("build.hvac.recovered_by", "strip")
