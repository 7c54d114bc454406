# METADATA
# title: the petrol engine keeps to the rule of its build date
# description: >-
#   A petrol passenger vehicle built from 1 January 1972 has working crankcase ventilation
#   and no more than 4.5 % carbon monoxide at idle; built from 1 July 1976 to 1 January 1986
#   also a carbon canister. Later design rules follow, which were not read. Older vehicles
#   are not listed, which does not make every engine legal in them.
# related_resources:
# - ref: https://www.sa.gov.au/topics/driving-and-transport/vehicles/vehicle-standards-and-modifications/engine-and-exhaust-modifications
#   description: South Australia on engine and exhaust modifications
# custom:
#   level: note
#   hold: inspection
#   basis: agency-guidance
#   source: >-
#     page of the state on engine and exhaust modifications, emission requirements for
#     passenger vehicles on petrol, read as far as the canister
#   outcomes:
#   - met
#   - unproven
#   - not applicable
#   remedy: >-
#     have carbon monoxide measured at idle, and show ventilation and canister with the
#     engine
#   caution: >-
#     exhaust at idle goes outdoors: carbon monoxide kills unnoticed
#   question:
#     ask: >-
#       Which emission requirement applies to this petrol vehicle by its build date, and is
#       it met with this engine?
#     office: South Australia, Vehicle Standards
#   reviewed: 2026-11-25
#   since: 0.1.0
#   waivable: true
package regions["au-sa"].petrol_equipment

import data.lib.judge

applies := judge.all_of([
	judge.when("build.engine.fuel", {"petrol"}),
	judge.when_since("build.chassis.built", "1972-01-01"),
	judge.when("build.chassis.category", {"passenger-car", "off-road-wagon"}),
])
