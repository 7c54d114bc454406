# METADATA
# title: an engine without a US emission label is accepted
# description: >-
#   An engine built since standards began may come into the country for road use only under
#   a certificate or an exemption. An engine sold elsewhere, or with no label to show its
#   family, has nothing to be matched with.
# custom:
#   level: note
#   hold: plan
#   basis: second-hand
#   source: >-
#     reference notes on section 203(a)(1) of the Clean Air Act and 40 CFR part 85 subpart
#     P, part 1068 subpart D; the texts were not read
#   outcomes:
#   - met
#   - unproven
#   - not applicable
#   remedy: >-
#     find the emission label or the family in writing from the maker, or choose a donor
#     that has one
#   question:
#     ask: >-
#       May an engine that bears no US emission label, or was certified for another market,
#       be used on the road in this chassis, and under which certificate or exemption did
#       it enter?
#     office: US Environmental Protection Agency, vehicle and engine compliance
#   reviewed: 2026-11-25
#   since: 0.1.0
#   waivable: true
package regions.us.uncertified_engine

import data.lib.judge

applies := judge.all_of([
	judge.when_min("build.chassis.model_year", "limits.us.first_standard_year"),
	judge.any_of([
		judge.when("build.engine.certification.certified_for", {"other", "none"}),
		judge.when("build.engine.certification.label", {"none"}),
	]),
])
