# METADATA
# title: the diesel meets the DT80 limits if it is tested
# description: >-
#   An older text bounds a registered diesel when it is tested over the DT80 cycle. To 3.5 t
#   of gross rating 1.5 g/km/t of oxides of nitrogen and 0.23 g/km/t of particles, whenever
#   it was built; above 3.5 t to 12 t 2.0 g/km/t, and 0.23 g/km/t built to December 1995 or
#   0.15 g/km/t from January 1996; opacity 25 % averaged over the cycle. The test mass is
#   half the sum of unladen mass and gross rating: 2750 kg for 2200 kg and 3300 kg. The
#   dates are those of the vehicle. A free-acceleration reading is another test and is not
#   compared. Not being tested is not being legal.
# related_resources:
# - ref: http://corrigan.austlii.edu.au/au/legis/sa/consol_reg//rtsr1999308/s147a.html
#   description: rule 147A of 1999
# custom:
#   level: note
#   hold: inspection
#   basis: second-hand
#   source: >-
#     Road Traffic (Vehicle Standards) Rules 1999 of South Australia, rule 147A, read in an
#     older consolidation; the rules of 2018 that followed were not read
#   outcomes:
#   - met
#   - unproven
#   - not applicable
#   remedy: have the pump set, and ask whether a test follows the engine change
#   caution: exhaust goes outdoors; nobody stands behind a vehicle on rollers
#   question:
#     ask: >-
#       Which DT80 limits are in force for this gross rating and build date, and is a test
#       asked after the engine change?
#     office: South Australia, Vehicle Standards
#   reviewed: 2026-11-25
#   since: 0.1.0
#   waivable: true
package regions["au-sa"].diesel_cycle

import data.lib.judge

applies := judge.when("build.engine.fuel", {"diesel"})
