# METADATA
# title: the engine is as new as the chassis
# description: >-
#   The donor's certified model year is not older than the chassis. An older engine in a
#   newer chassis is what the fact sheet calls tampering unless shown otherwise.
# related_resources:
# - ref: http://www.off-road.com/trucks-4x4/tech/engine-switching-fact-sheet-20126.html
#   description: copy of the EPA engine switching fact sheet, part A read on 2026-11-25
# custom:
#   level: should
#   hold: plan
#   basis: agency-guidance
#   source: >-
#     EPA engine switching fact sheet as quoted in a second copy: a certified configuration
#     of the same or newer model year as the chassis
#   outcomes:
#   - met
#   - not met
#   - unproven
#   - not applicable
#   remedy: look for a donor of the chassis' year or newer before money is spent
#   reviewed: 2026-11-25
#   since: 0.1.0
#   waivable: true
package regions.us.engine_year

import data.lib.judge

applies := judge.when_min("build.chassis.model_year", "limits.us.first_standard_year")

findings contains judge.limit_min("build.engine.model_year", "build.chassis.model_year")
