# METADATA
# title: the petrol inspection that is due has been passed
# description: >-
#   A vehicle on record as petrol is called to the inspection for petrol vehicles, by
#   idle or by dynamometer and on-board diagnostics according to year and mass, in much
#   the same counties as diesels. A converted truck whose title still says petrol is
#   called to a test it can not take.
# related_resources:
# - ref: https://regulations.justia.com/states/colorado/1000/1001/rule-5-ccr-1001-13/part-c/section-5-ccr-1001-13-c-ii
#   description: Regulation 11, part C II
# custom:
#   level: note
#   hold: inspection
#   basis: second-hand
#   source: >-
#     reference notes on the counties; Regulation 11, part C II, was read for the split
#     by year and mass; that the record decides who is called is from memory
#   outcomes:
#   - met
#   - unproven
#   - not applicable
#   remedy: have the fuel on the title changed before the registration falls due
#   question:
#     ask: >-
#       Is this vehicle, by title and by engine, in the petrol inspection, and has it
#       passed or been taken off the list?
#     office: Colorado Department of Public Health and Environment, mobile sources
#   reviewed: 2026-11-25
#   since: 0.1.0
#   waivable: true
package regions["us-co"].petrol_test

import data.lib.judge

applies := judge.any_of([
	judge.when("build.engine.fuel", {"petrol"}),
	judge.when("build.registration.title_fuel", {"petrol"}),
])
