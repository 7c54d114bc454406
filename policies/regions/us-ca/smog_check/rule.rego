# METADATA
# title: the check that is due has been passed
# description: >-
#   Diesels of model year 1998 and later up to and including 14,000 lb, and petrol and gas
#   vehicles of 1976 and later, are in the periodic check, and a certificate is asked for
#   at first registration and transfer. Not to be in it says nothing of whether the engine
#   change is legal.
# related_resources:
# - ref: https://govt.westlaw.com/calregs/Document/I1593F4014C8211EC89E5000D3A7C4BC3?viewType=FullText&originationContext=documenttoc&transitionType=CategoryPageItem&contextData=(sc.Default)
#   description: 16 CCR 3340.5, official text of the California Code of Regulations
# - ref: https://lexace.ai/us/statute/california/hsc-44011
#   description: Health and Safety Code 44011
# - ref: https://leginfo.legislature.ca.gov/faces/codes_displaySection.xhtml?lawCode=VEH&sectionNum=4000.1.
#   description: Vehicle Code 4000.1
# custom:
#   level: note
#   hold: inspection
#   basis: regulation
#   source: >-
#     16 CCR 3340.5(b) and (c); Health and Safety Code 44011(a)(3); Vehicle Code 4000.1(a).
#     That both the fuel on record and the fuel burnt bring a vehicle into scope is a
#     reading on the safe side, from memory
#   outcomes:
#   - met
#   - unproven
#   - not applicable
#   remedy: >-
#     present the vehicle, smoke-free and with its diagnostics ready, where the referee
#     sends it
#   question:
#     ask: >-
#       Which check applies to this vehicle with its new engine, and has it been passed?
#       Any visible smoke from tailpipe or crankcase fails it by statute.
#     office: California Bureau of Automotive Repair, Smog Check referee
#   reviewed: 2026-11-25
#   since: 0.1.0
#   waivable: true
package regions["us-ca"].smog_check

import data.lib.judge

_sparked := {"petrol", "lpg", "cng"}

# A vehicle is called to the check as what its record says and tested as what it is.
applies := judge.any_of([
	judge.all_of([
		judge.any_of([
			judge.when("build.engine.fuel", {"diesel"}),
			judge.when("build.registration.title_fuel", {"diesel"}),
		]),
		judge.when_min("build.chassis.model_year", "limits.us_ca.diesel_smog_check_year"),
		judge.when_max("build.chassis.ratings.gross", "limits.us_ca.referee_gross"),
	]),
	judge.all_of([
		judge.any_of([
			judge.when("build.engine.fuel", _sparked),
			judge.when("build.registration.title_fuel", _sparked),
		]),
		judge.when_min("build.chassis.model_year", "limits.us_ca.petrol_smog_check_year"),
	]),
])
