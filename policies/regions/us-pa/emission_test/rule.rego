# METADATA
# title: the emission inspection that is due has been passed
# description: >-
#   Petrol vehicles of 1975 and later up to and including 9,000 lb are inspected yearly
#   where their county is one of those that the Department lists; from 1996, to 8,500
#   lb, through their diagnostics. Diesels are not in the program, by what the
#   registration card says: a converted truck still on record as petrol is called and
#   has nothing to answer with. Vehicles of the current model year and those driven less
#   than 5,000 miles a year are out.
# related_resources:
# - ref: https://pacodeandbulletin.gov/Display/pabull?d=reduce&file=%2Fsecure%2Fpabulletin%2Fdata%2Fvol27%2F27-39%2F1582b.html
#   description: 67 Pa. Code 177.51 as adopted in 1997
# - ref: http://pacodeandbulletin.gov/Display/pabull?file=/secure/pabulletin/data/vol33/33-47/2229a.html&d=reduce
#   description: tests by year and mass, 33 Pa.B. 5706
# - ref: https://www.pacodeandbulletin.gov/Display/pacode?file=/secure/pacode/data/067/chapter177/s177.204.html&d=reduce
#   description: 67 Pa. Code 177.204, causes of failure
# custom:
#   level: note
#   hold: inspection
#   basis: regulation
#   source: >-
#     67 Pa. Code 177.51(c) to (e) as adopted in 1997 and 33 Pa.B. 5706; the list of
#     counties is second-hand, so every county is asked about; that the card decides is
#     second-hand as well
#   outcomes:
#   - met
#   - unproven
#   - not applicable
#   remedy: >-
#     have the fuel on title and card changed, and see whether the card bears the notice
#     of emission inspection
#   question:
#     ask: >-
#       Does the registration card call this vehicle to the emission inspection, and has
#       it passed or been taken off the list?
#     office: Pennsylvania Department of Transportation, vehicle inspection
#   reviewed: 2026-11-25
#   since: 0.1.0
#   waivable: true
package regions["us-pa"].emission_test

import data.lib.judge

applies := judge.all_of([
	judge.when_min("build.chassis.model_year", "limits.us_pa.tested_year"),
	judge.when_max("build.chassis.ratings.gross", "limits.us_pa.tested_gross"),
	judge.any_of([
		judge.when("build.engine.fuel", {"petrol"}),
		judge.when("build.registration.title_fuel", {"petrol"}),
	]),
])
