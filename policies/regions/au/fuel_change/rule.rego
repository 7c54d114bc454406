# METADATA
# title: the change of fuel is accepted and recorded
# description: >-
#   A petrol chassis with a diesel engine is recorded, tested and charged as another
#   vehicle. No state text on it was found, which is no permission.
# custom:
#   level: note
#   hold: plan
#   basis: memory
#   source: reference notes, which list it as a gap; nothing was read on it
#   outcomes:
#   - met
#   - unproven
#   - not applicable
#   remedy: ask before the engine is bought, and take the answer to the engineer
#   question:
#     ask: >-
#       May this vehicle change its fuel, which emission rule then applies, and how is the
#       fuel on the registration changed?
#     office: registration authority of the state, and the engineer it recognises
#   reviewed: 2026-11-25
#   since: 0.1.0
#   waivable: true
package regions.au.fuel_change

import data.lib.judge

applies := judge.when_differs("build.registration.title_fuel", "build.engine.fuel")
