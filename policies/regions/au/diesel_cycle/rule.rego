# METADATA
# title: the diesel keeps to the DT80 limits if it is tested
# description: >-
#   The standards of the states bound what a diesel emits over the DT80 driving cycle:
#   oxides of nitrogen and particles in g for each km and t of test mass, and opacity
#   averaged over the cycle, by gross rating and by build before or from 1 January 1996. A
#   free-acceleration reading is another test and is not compared with them. South Australia
#   and Victoria have questions of their own. That no test is called for does not make the
#   engine legal.
# related_resources:
# - ref: https://kirra.austlii.edu.au/au/legis/tas/num_reg/vatsar20182018n61549/s22.html
#   description: Tasmania, emissions of light vehicles
# custom:
#   level: note
#   hold: inspection
#   basis: second-hand
#   source: >-
#     reference notes: regulation 126 of Tasmania of 2018 and the older table of South
#     Australia; the text in force in this state was not read
#   outcomes:
#   - met
#   - unproven
#   - not applicable
#   remedy: have the pump set, and let the certifier say whether a test is wanted
#   caution: exhaust goes outdoors; nobody stands behind a vehicle on rollers
#   question:
#     ask: >-
#       Which limits for the DT80 cycle apply here, does the date of the vehicle or of the
#       engine count, and is a test asked after an engine change?
#     office: registration authority of the state, and the engineer it recognises
#   reviewed: 2026-11-25
#   since: 0.1.0
#   waivable: true
package regions.au.diesel_cycle

import data.lib.judge

applies := judge.all_of([
	judge.when("build.engine.fuel", {"diesel"}),
	judge.negate(judge.in_region({"AU-SA", "AU-VIC"})),
])
