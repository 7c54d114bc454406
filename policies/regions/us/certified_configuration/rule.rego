# METADATA
# title: the finished vehicle matches a certified configuration
# description: >-
#   The fact sheet allows a different engine where the finished vehicle equals, in every
#   emission-related part, a certified configuration as new as the chassis or newer, or
#   where there is a documented reasonable basis that emissions are no worse. Where a
#   state's own text is silent on engine changes, the agency's letter of 1996 starts from
#   the same presumption: a newer engine is needed, and not enough. An engine of the same
#   family is a replacement: same_design.
# related_resources:
# - ref: http://www.off-road.com/trucks-4x4/tech/engine-switching-fact-sheet-20126.html
#   description: copy of the EPA engine switching fact sheet, part A read on 2026-11-25
# - ref: http://www.off-road.com/trucks-4x4/tech/united-18320.html
#   description: copy of the EPA letter of 30 April 1996 on engine changes
# custom:
#   level: note
#   hold: plan
#   basis: agency-guidance
#   source: >-
#     EPA engine switching fact sheet, in the words quoted in a second copy; the 2020
#     policy that follows it is known at second hand
#   outcomes:
#   - met
#   - unproven
#   - not applicable
#   remedy: >-
#     ask the engine's and the chassis' makers for the certified configuration, then the
#     agency
#   question:
#     ask: >-
#       Does this engine, complete with its own emission equipment, make the chassis equal
#       to a certified configuration of the same or a newer model year, or on what
#       documented basis are emissions no worse?
#     office: US Environmental Protection Agency, vehicle and engine compliance
#   reviewed: 2026-11-25
#   since: 0.1.0
#   waivable: true
package regions.us.certified_configuration

import data.lib.judge

applies := judge.all_of([
	judge.when_min("build.chassis.model_year", "limits.us.first_standard_year"),
	judge.when_differs("build.outgoing_engine.family", "build.engine.family"),
])
