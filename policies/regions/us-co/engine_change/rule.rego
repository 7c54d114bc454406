# METADATA
# title: the state accepts the changed engine
# description: >-
#   The state forbids taking off, disabling or reprogramming emission controls on
#   vehicles of every fuel and mass, and names larger turbochargers and exhausts before
#   the catalyst. What its regulations say of a changed engine was not readable; a
#   technical centre of the state is said to decide single cases.
# related_resources:
# - ref: https://cdphe.colorado.gov/motor-vehicle-emissions/tampering-of-emissions-control-systems-is-prohibited
#   description: Colorado Department of Public Health and Environment on tampering
# custom:
#   level: note
#   hold: plan
#   basis: memory
#   source: >-
#     page of the Colorado Department of Public Health and Environment on tampering,
#     with C.R.S. 42-4-314; a clause on engine changes in Regulations 11 and 12 was not
#     found
#   outcomes:
#   - met
#   - unproven
#   - not applicable
#   remedy: ask a state technical centre with the labels of both engines at hand
#   question:
#     ask: >-
#       Under which conditions is this engine accepted in this chassis, and which of the
#       original emission controls must stay or come along?
#     office: Colorado Department of Public Health and Environment, mobile sources
#   reviewed: 2026-11-25
#   since: 0.1.0
#   waivable: true
package regions["us-co"].engine_change

import data.lib.judge

applies := judge.when_differs("build.outgoing_engine.family", "build.engine.family")
