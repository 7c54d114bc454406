# METADATA
# title: the old periodic emission test was passed
# description: >-
#   Not in force: the periodic test of light vehicles ended with 2014, and the regulation
#   on its exemptions was repealed on 1 March 2017. That it is gone does not make an
#   engine change legal: smoke is still compared on the road, and the inspection still
#   looks for the catalyst.
# related_resources:
# - ref: https://free.bcpublications.ca/civix/document/id/complete/statreg/320_92_pit
#   description: the repeal of 1 March 2017
# custom:
#   level: note
#   hold: inspection
#   basis: memory
#   source: the day it ended from memory; the repeal of 1 March 2017 on the official page
#   outcomes:
#   - met
#   - unproven
#   - not applicable
#   remedy: >-
#     nothing to do: the test is gone
#   question:
#     ask: >-
#       Was this vehicle called to the periodic test, and has it passed it with this
#       engine?
#     office: Insurance Corporation of British Columbia
#   reviewed: 2026-11-25
#   since: 0.1.0
#   waivable: true
package regions["ca-bc"].periodic_test

import data.lib.judge

applies := judge.all_of([
	judge.negate(judge.from_day("2015-01-01")),
	judge.when("build.engine.fuel", {"diesel", "petrol", "lpg", "cng"}),
])
