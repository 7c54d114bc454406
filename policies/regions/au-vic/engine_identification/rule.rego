# METADATA
# title: an engine without a number may be registered
# description: >-
#   The regulations deal with engine identification numbers that are to be stamped, that
#   occur twice, or that were altered. An engine whose number is missing or can not be read
#   is settled before it is bought: it may never be recorded.
# related_resources:
# - ref: https://casechat.au/cases/au/road-safety-vehicles-regulations-2021-vic
#   description: >-
#     Road Safety (Vehicles) Regulations 2021, contents as at 30 September 2025, copy
# custom:
#   level: note
#   hold: plan
#   basis: second-hand
#   source: >-
#     headings of regulations 26 to 31 of the Road Safety (Vehicles) Regulations 2021, read
#     in the contents only
#   outcomes:
#   - met
#   - unproven
#   - not applicable
#   remedy: look for the number before paying; ask for a new number before stamping anything
#   question:
#     ask: May this engine be recorded without its own number, and who stamps one?
#     office: Victorian road authority (VicRoads)
#   reviewed: 2026-11-25
#   since: 0.1.0
#   waivable: true
package regions["au-vic"].engine_identification

import data.lib.judge

applies := judge.when("build.engine.number", {"none"})
