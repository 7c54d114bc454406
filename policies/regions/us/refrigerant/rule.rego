# METADATA
# title: a certified technician opens the refrigerant circuit
# description: >-
#   Whoever is paid for work that involves the refrigerant of a vehicle uses approved
#   equipment and has been trained and certified for it. An owner at work without pay is
#   outside this section; letting refrigerant escape is forbidden to everybody (from
#   memory).
# related_resources:
# - ref: https://codes.findlaw.com/cfr/title-40-protection-of-environment/cfr-sect-40-82-34/
#   description: 40 CFR 82.34
# custom:
#   level: must
#   hold: strip
#   basis: regulation
#   source: 40 CFR 82.34(a), under section 609 of the Clean Air Act, 42 U.S.C. 7671h
#   needs_basis:
#     inspection: documented with evidence
#   outcomes:
#   - met
#   - not met
#   - unproven
#   - not applicable
#   remedy: >-
#     have the charge recovered by a technician certified under section 609 before a line
#     is opened, and keep the receipt
#   caution: >-
#     refrigerant blinds and freezes: gloves and goggles, and no flame where it may have
#     leaked
#   reviewed: 2026-11-25
#   since: 0.1.0
#   waivable: true
package regions.us.refrigerant

import data.lib.judge

applies := judge.all_of([
	judge.when("build.registration.installer", {"shop"}),
	judge.when("build.hvac.refrigerant_opened", {true}),
])

findings contains judge.present_at("build.hvac.recovered_by", "strip")
