# METADATA
# title: a historic vehicle has no engine of a later age
# description: >-
#   Changes that were usual in the first ten years of a vehicle count as of its time, even
#   if made today. An engine built later than that can not have been one. One within the
#   ten years is not yet of its time: its design has to have been usual in this vehicle
#   then.
# related_resources:
# - ref: https://kues.de/ratgeber/oldtimer
#   description: KUES on historic vehicles
# custom:
#   level: should
#   hold: plan
#   basis: agency-guidance
#   source: >-
#     reference notes on the page of the inspection body KUES; a change made more than
#     thirty years ago is allowed as well and is not examined here
#   outcomes:
#   - met
#   - not met
#   - unproven
#   - not applicable
#   remedy: >-
#     choose an engine that was fitted to this model line in its first ten years, or give
#     up the historic plate
#   reviewed: 2026-11-25
#   since: 0.1.0
#   waivable: true
package regions.de.historic_era

import data.lib.judge

applies := judge.when("build.registration.plate_class", {"historic"})

findings contains judge.about("engine.model_year", judge.limit_max("figures.approval.engine_year_lead", "limits.de.historic_engine_lead"))
