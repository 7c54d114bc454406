# METADATA
# title: the province has the new fuel and engine on record
# description: >-
#   Which inspections a vehicle is called to follows what is on record. How a change of
#   fuel or engine gets there is a matter of each province and was found in none of their
#   texts.
# custom:
#   level: note
#   hold: handover
#   basis: memory
#   source: from memory that provinces record the fuel; no text was found
#   outcomes:
#   - met
#   - unproven
#   - not applicable
#   remedy: >-
#     take the receipt of the engine and the inspection report to the office that
#     registers
#   question:
#     ask: Which form and proof change the fuel on the registration, and is it done?
#     office: registrar of the province or territory
#   reviewed: 2026-11-25
#   since: 0.1.0
#   waivable: true
package regions.ca.fuel_entry

import data.lib.judge

applies := judge.when_differs("build.registration.title_fuel", "build.engine.fuel")
