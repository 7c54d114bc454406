# METADATA
# title: the change of fuel is accepted
# description: >-
#   A chassis titled for one fuel gets an engine for another. Whether that fuel was ever
#   certified in this chassis decides how the vehicle is tested, and whether it can be at
#   all.
# custom:
#   level: note
#   hold: plan
#   basis: second-hand
#   source: >-
#     reference notes on 40 CFR 51.357(d) and the EPA fact sheet; the regulation was not
#     read
#   outcomes:
#   - met
#   - unproven
#   - not applicable
#   remedy: >-
#     ask before buying the engine; have the fuel on the title changed when the answer is
#     there
#   question:
#     ask: >-
#       Was an engine for this fuel certified in this chassis line for its model year or a
#       later one, and what else is needed to change the fuel on the title?
#     office: state motor vehicle department, and the US Environmental Protection Agency
#   reviewed: 2026-11-25
#   since: 0.1.0
#   waivable: true
package regions.us.fuel_change

import data.lib.judge

applies := judge.when_differs("build.registration.title_fuel", "build.engine.fuel")
