# METADATA
# title: the referee certifies the noise from 6,000 lb up
# description: >-
#   From 1 January 2027 the text of 27150.2 is in force that lets the referee certify
#   vehicles of 6,000 to 14,000 lb against the limits of 27204, by gross rating and date of
#   manufacture. Until then noise_before_2027 asks.
# related_resources:
# - ref: https://self-law.org/code/ca/vehicle-code/27150-2-2
#   description: Vehicle Code 27150.2, the newer text
# - ref: https://california.public.law/codes/ca_veh_code_section_27204
#   description: Vehicle Code 27204
# - ref: https://www.legalfina.com/en/laws/ca/vehicle/equipment_of_vehicles/other_equipment/exhaust_systems
#   description: Vehicle Code 27150 to 27159
# custom:
#   level: note
#   hold: inspection
#   basis: statute
#   source: >-
#     Vehicle Code 27150.2(b), the newer text, and 27204; that the older text lapses on
#     that day was read in a summary
#   outcomes:
#   - met
#   - unproven
#   - not applicable
#   remedy: >-
#     ask the referee which method is used; a stationary level is not compared with a
#     figure taken in passing
#   question:
#     ask: >-
#       Which limit of section 27204 applies to this gross rating and date of manufacture,
#       by which method, and is it met?
#     office: California Bureau of Automotive Repair, Smog Check referee
#   reviewed: 2026-11-25
#   since: 0.1.0
#   waivable: true
package regions["us-ca"].noise_heavier

import data.lib.judge

applies := judge.all_of([
	judge.when_min("build.chassis.ratings.gross", "limits.us_ca.noise_gross"),
	judge.when_max("build.chassis.ratings.gross", "limits.us_ca.referee_gross"),
	judge.from_day("2027-01-01"),
])
