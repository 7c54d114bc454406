# METADATA
# title: the new fuel is on the register and charges are paid
# description: >-
#   A vehicle that runs on diesel pays road user charges by distance, and its licence is
#   bought before it is driven. A petrol vehicle that becomes a diesel has to be recorded as
#   one; how was not found. The scheme is under reform.
# related_resources:
# - ref: https://www.govt.nz/browse/transport/keeping-a-vehicle-on-the-road/vehicle-licensing-and-road-user-charges/
#   description: government page on licensing and charges
# custom:
#   level: note
#   hold: inspection
#   basis: agency-guidance
#   source: >-
#     page of the New Zealand government on vehicle licensing and road user charges, read on
#     2026-11-25; how the fuel is changed on the register is from memory
#   outcomes:
#   - met
#   - unproven
#   - not applicable
#   remedy: >-
#     ask for the change of fuel, and buy the first distance licence with the odometer
#     reading of that day
#   question:
#     ask: >-
#       Is the change of fuel recorded, and is a road user charges licence held for this
#       vehicle?
#     office: NZ Transport Agency
#   reviewed: 2026-11-25
#   since: 0.1.0
#   waivable: true
package regions.nz.road_user_charges

import data.lib.judge

applies := judge.when_differs("build.registration.title_fuel", "build.engine.fuel")
