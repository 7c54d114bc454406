# METADATA
# title: a receipt shows the number of the engine
# description: >-
#   The papers of the donor name the engine by its number: receipt, deregistration or an
#   affidavit. Clearance and, for a built-up vehicle, registration ask where the engine came
#   from.
# related_resources:
# - ref: https://www.acts.co.za/national-road-traffic-act-1996/r225_9__additional_requirement
#   description: National Road Traffic Regulations, 2000, regulation 9
# - ref: http://www.landyonline.co.za/techtalk/vehicle_registration.htm
#   description: an owner on registering rebuilt vehicles
# custom:
#   level: should
#   hold: plan
#   basis: second-hand
#   source: >-
#     reference notes and an owner's account of two registrations; regulation 9(a) asks for
#     the receipts of a vehicle built up from parts
#   outcomes:
#   - met
#   - not met
#   - unproven
#   remedy: >-
#     pay only against a receipt that names seller and engine number, and record it as
#     evidence of engine.number
#   reviewed: 2026-11-25
#   since: 0.1.0
#   waivable: true
package regions.za.donor_papers

import data.lib.judge

findings contains judge.supported("build.engine.number")
