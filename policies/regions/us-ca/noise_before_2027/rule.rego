# METADATA
# title: noise from 6,000 lb up is judged before 2027 too
# description: >-
#   The text of 27150.2 in force to the end of 2026 lets the referee certify only vehicles
#   below 6,000 lb. Above, the limits of 27204 stand, and who takes the level is not said
#   there.
# related_resources:
# - ref: https://www.legalfina.com/en/laws/ca/vehicle/equipment_of_vehicles/other_equipment/exhaust_systems
#   description: Vehicle Code 27150 to 27159
# - ref: https://california.public.law/codes/ca_veh_code_section_27204
#   description: Vehicle Code 27204
# custom:
#   level: note
#   hold: inspection
#   basis: second-hand
#   source: >-
#     a summary of Vehicle Code 27150.2, the text that lapses on 1 January 2027; 27204
#     itself was read
#   outcomes:
#   - met
#   - unproven
#   - not applicable
#   remedy: >-
#     keep the muffler of the chassis maker where it can be kept, and ask before the
#     exhaust is built
#   question:
#     ask: >-
#       Who takes the noise of a vehicle of this gross rating before 2027, by which method,
#       and against which limit of section 27204?
#     office: California Highway Patrol
#   reviewed: 2026-11-25
#   since: 0.1.0
#   waivable: true
package regions["us-ca"].noise_before_2027

import data.lib.judge

applies := judge.all_of([
	judge.when_min("build.chassis.ratings.gross", "limits.us_ca.noise_gross"),
	judge.when_max("build.chassis.ratings.gross", "limits.us_ca.referee_gross"),
	judge.negate(judge.from_day("2027-01-01")),
])
