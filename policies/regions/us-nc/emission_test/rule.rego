# METADATA
# title: the emission inspection that is due has been passed
# description: >-
#   Vehicles that run or can run on petrol, of at most 20 model years, are inspected
#   through their diagnostics in the counties that the statute names; it stands in three
#   versions, of which the shorter ones, the last with Mecklenburg alone, wait for
#   federal approval, and another clause ends it at model year 2016. A true diesel is
#   out by the rule, once the record says that it is one. Not to be tested is not to be
#   legal: the safety inspection looks at emission controls everywhere.
# related_resources:
# - ref: https://casetext.com/statute/general-statutes-of-north-carolina/chapter-143-state-departments-institutions-and-commissions/article-21b-air-pollution-control/section-143-215107a-motor-vehicle-emissions-testing-and-maintenance-program
#   description: G.S. 143-215.107A, three versions of the list
# - ref: https://casetext.com/statute/general-statutes-of-north-carolina/chapter-20-motor-vehicles/article-3a-safety-and-emissions-inspection-program/part-2-safety-and-emissions-inspections-of-certain-vehicles/section-20-1832-description-of-vehicles-subject-to-safety-or-emissions-inspection-definitions
#   description: G.S. 20-183.2
# custom:
#   level: note
#   hold: inspection
#   basis: statute
#   source: >-
#     G.S. 143-215.107A(c) and 20-183.2(b), as of 2024; which version is in force was
#     not found, so every county named in one is asked about; that only petrol counts is
#     from 19A NCAC 03D .0543, read in a copy without an address
#   outcomes:
#   - met
#   - unproven
#   - not applicable
#   remedy: have the fuel on the title changed before the inspection falls due
#   question:
#     ask: >-
#       Is the emission inspection still due in this county for this vehicle, by title
#       and by engine, and has it passed?
#     office: North Carolina Division of Motor Vehicles, license and theft bureau
#   reviewed: 2026-11-25
#   since: 0.1.0
#   waivable: true
package regions["us-nc"].emission_test

import data.lib.judge

_counties := {
	"Alamance", "Buncombe", "Cabarrus", "Cumberland", "Davidson", "Durham", "Forsyth", "Franklin",
	"Gaston", "Guilford", "Iredell", "Johnston", "Lee", "Lincoln", "Mecklenburg", "New Hanover",
	"Onslow", "Randolph", "Rockingham", "Rowan", "Union", "Wake",
}

applies := judge.all_of([
	judge.when_zone(_counties),
	judge.when_max("figures.approval.age_by_model_year", "limits.us_nc.tested_to_age"),
	judge.any_of([
		judge.when("build.engine.fuel", {"petrol"}),
		judge.when("build.registration.title_fuel", {"petrol"}),
	]),
])
