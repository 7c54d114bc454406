# METADATA
# title: the opacity inspection that is due has been passed
# description: >-
#   In the program area along the Front Range sale, first registration and renewal of a
#   diesel need an opacity certificate: each year for a light one of 2003 and older or
#   of ten model years, else every second year. A diesel is what burns diesel by
#   compression now, so that a converted truck is one whatever it was made as; vehicles
#   on collector plates are not. New vehicles are exempt for years, and fleets certify
#   themselves.
# related_resources:
# - ref: https://getpocketlaw.com/law/state_colorado/section-42-4-401-definitions_ae59b1463fa3
#   description: C.R.S. 42-4-401, definitions
# - ref: https://lexace.ai/us/statute/colorado/42-4-406
#   description: C.R.S. 42-4-406
# - ref: https://casetext.com/regulation/colorado-administrative-code/department-1000-department-of-public-health-and-environment/division-1001-air-quality-control-commission/rule-5-ccr-1001-15-regulation-number-12-reduction-of-diesel-vehicle-emissions/part-b-diesel-opacity-inspection-program/section-5-ccr-1001-15-b-i-general-provisions
#   description: Regulation 12, part B, current in September 2024
# custom:
#   level: note
#   hold: inspection
#   basis: statute
#   source: >-
#     C.R.S. 42-4-406 and 42-4-401(5), read in copies; Regulation 12, part B. The
#     program area of 42-4-401(8) was not read, so every county is asked about
#   outcomes:
#   - met
#   - unproven
#   - not applicable
#   remedy: >-
#     look the address up in the program area and book a diesel station before the title
#     work
#   question:
#     ask: >-
#       Is this vehicle in the diesel program area, how often is it inspected, and has
#       it passed with its new engine?
#     office: Colorado Department of Public Health and Environment, mobile sources
#   reviewed: 2026-11-25
#   since: 0.1.0
#   waivable: true
package regions["us-co"].diesel_test

import data.lib.judge

applies := judge.all_of([
	judge.when("build.engine.fuel", {"diesel"}),
	judge.negate(judge.when("build.registration.plate_class", {"historic"})),
])
