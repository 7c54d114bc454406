# METADATA
# title: the fuel on the registration is corrected
# description: >-
#   The check that is due, and whether one is, follows the fuel on record. The papers for a
#   change of fuel were not found in an official text.
# custom:
#   level: note
#   hold: inspection
#   basis: memory
#   source: >-
#     reference notes: statement of facts, form REG 256, and verification of the vehicle,
#     form REG 31; which set a change of fuel needs is from memory
#   outcomes:
#   - met
#   - unproven
#   - not applicable
#   remedy: take title, the referee's paper and the vehicle to the office
#   question:
#     ask: What is needed to change the fuel on title and registration, and is it done?
#     office: California Department of Motor Vehicles
#   reviewed: 2026-11-25
#   since: 0.1.0
#   waivable: true
package regions["us-ca"].fuel_entry

import data.lib.judge

applies := judge.when_differs("build.registration.title_fuel", "build.engine.fuel")
