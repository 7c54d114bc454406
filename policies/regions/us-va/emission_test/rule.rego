# METADATA
# title: the emission inspection that is due has been passed
# description: >-
#   In Northern Virginia vehicles up to 10,000 lb and 25 years old are inspected every
#   second year, those with diagnostics through them; diesels are said to be in only
#   from 1997 and up to 8,500 lb. A converted truck still on record as petrol is called.
#   Antique plates are out. Elsewhere in the state nothing is tested, which is not to
#   say that anything goes.
# related_resources:
# - ref: https://register.dls.virginia.gov/details.aspx?id=3691
#   description: amendment of 9VAC5-91 effective 28 August 2013
# - ref: https://law.lis.virginia.gov/admincodefull/title9/agency5/chapter91/partVI
#   description: 9VAC5-91 part VI, November 2024
# - ref: https://law.justia.com/codes/virginia/2006/toc4602000/46.2-1177.html
#   description: Code of Virginia 46.2-1177, text of 2006
# custom:
#   level: note
#   hold: inspection
#   basis: regulation
#   source: >-
#     9VAC5-91, background of the amendment of 2013 and part VI; the bounds for diesels
#     are second-hand, and whether their age ends it was not found, so diesels of every
#     age from 1997 on are asked about; Code of Virginia 46.2-1177 in the text of 2006
#     for the plates
#   outcomes:
#   - met
#   - unproven
#   - not applicable
#   remedy: >-
#     have the fuel on the title changed, and the vehicle presented warm and without
#     smoke
#   question:
#     ask: >-
#       Is this vehicle, by title, engine, weight and age, in the emission inspection,
#       and has it passed?
#     office: Virginia Department of Environmental Quality, vehicle emissions
#   reviewed: 2026-11-25
#   since: 0.1.0
#   waivable: true
package regions["us-va"].emission_test

import data.lib.judge

_localities := {
	"Arlington", "Fairfax", "Loudoun", "Prince William", "Stafford",
	"Alexandria", "Falls Church", "Manassas", "Manassas Park",
}

applies := judge.all_of([
	judge.when_zone(_localities),
	judge.negate(judge.when("build.registration.plate_class", {"historic"})),
	judge.any_of([
		judge.all_of([
			judge.when("build.engine.fuel", {"diesel"}),
			judge.when_min("build.chassis.model_year", "limits.us_va.diesel_year"),
			judge.when_max("build.chassis.ratings.gross", "limits.us_va.diesel_gross"),
		]),
		judge.all_of([
			judge.any_of([
				judge.when("build.engine.fuel", {"petrol", "lpg", "cng"}),
				judge.when("build.registration.title_fuel", {"petrol", "lpg", "cng"}),
			]),
			judge.when_max("figures.approval.age_by_model_year", "limits.us_va.tested_to_age"),
			judge.when_max("build.chassis.ratings.gross", "limits.us_va.tested_gross"),
		]),
	]),
])
