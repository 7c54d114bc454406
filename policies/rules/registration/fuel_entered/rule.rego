# METADATA
# title: the registration names the fuel that is burnt
# description: >-
#   A change of fuel, displacement or power makes the registration paper wrong; the keeper
#   has to tell the office. Tax, test and insurance follow the paper: a vehicle on the
#   road with the old fuel on it is not the vehicle that was registered.
# related_resources:
# - ref: http://www.legislation.gov.uk/uksi/2002/2742/part/IV
#   description: Registration and Licensing Regulations 2002, reg. 16, read on 2026-11-25
# - ref: https://www.buzer.de/15_FZV.htm
#   description: FZV section 15, version of 2023, read on 2026-11-25
# custom:
#   level: must
#   hold: handover
#   basis: regulation
#   source: >-
#     Great Britain: Road Vehicles (Registration and Licensing) Regulations 2002, reg.
#     16(1); Germany: FZV section 15(1) no. 3. Only the fuel is compared here;
#     displacement, power and engine number are told to the office with it
#   outcomes:
#   - met
#   - not met
#   - unproven
#   - not applicable
#   remedy: >-
#     tell the office with the registration paper and the evidence for the new engine,
#     tell the insurer at the same time, and write the fuel of the new paper here
#   reviewed: 2026-11-25
#   since: 0.1.0
#   waivable: true
package rules.registration.fuel_entered

import data.lib.judge

applies := judge.in_region({"GB", "DE"})

findings contains judge.equals("build.registration.title_fuel", "build.engine.fuel")
