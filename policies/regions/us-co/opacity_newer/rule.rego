# METADATA
# title: a reading above 20 % opacity is accepted
# description: >-
#   A change of Regulation 12 adopted on 16 January 2025 lowers the limit from 40 % to
#   20 % over five seconds. From which day it holds for which class of vehicle was not
#   found, so a reading between the two is neither good nor bad here.
# related_resources:
# - ref: https://cdphe.colorado.gov/motor-vehicle-emissions/emissions-inspections-for-diesel-powered-vehicles
#   description: Colorado Department of Public Health and Environment on diesel inspections
# custom:
#   level: note
#   hold: inspection
#   basis: agency-guidance
#   source: >-
#     page of the Colorado Department of Public Health and Environment on diesel
#     inspections; the day and the classes of the change were not seen
#   outcomes:
#   - met
#   - unproven
#   - not applicable
#   remedy: >-
#     ask a diesel station which limit it prints today, or bring the reading below 20 %
#   question:
#     ask: >-
#       Which opacity limit applies today to a diesel of this mass and model year, and
#       is this reading within it?
#     office: Colorado Department of Public Health and Environment, mobile sources
#   reviewed: 2026-11-25
#   since: 0.1.0
#   waivable: true
package regions["us-co"].opacity_newer

import data.lib.judge

applies := judge.all_of([
	judge.when("build.engine.fuel", {"diesel"}),
	judge.negate(judge.when_max("build.engine.smoke_opacity", "limits.us_co.opacity_newer")),
])
