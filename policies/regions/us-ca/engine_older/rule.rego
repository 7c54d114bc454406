# METADATA
# title: an engine older than the chassis is accepted
# description: >-
#   The engine and its emission equipment are said to have to be of the year of the chassis
#   or newer, and to meet a standard as strict.
# custom:
#   level: note
#   hold: plan
#   basis: second-hand
#   source: >-
#     reference notes on 16 CCR 3362.1 and the engine change guidelines of the Bureau of
#     Automotive Repair; neither text was read
#   outcomes:
#   - met
#   - unproven
#   - not applicable
#   remedy: look for a donor of the year of the chassis or newer
#   question:
#     ask: >-
#       May an engine of an earlier model year than the chassis be approved for it, and
#       against which standard is it judged?
#     office: California Bureau of Automotive Repair, Smog Check referee
#   reviewed: 2026-11-25
#   since: 0.1.0
#   waivable: true
package regions["us-ca"].engine_older

import data.lib.judge

applies := judge.negate(judge.when_min("build.engine.model_year", "build.chassis.model_year"))
