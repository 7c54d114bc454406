# METADATA
# title: no value is beyond what a vehicle can have
# description: >-
#   Zero, a negative number, an engine of ninety tonnes: a slip of the finger, or of the
#   unit, that every figure which reads the value refuses. Left alone it takes the figures
#   with it, and what they would have warned of is not seen.
# custom:
#   level: should
#   hold: plan
#   basis: physics
#   source: >-
#     the bounds within which the formulas hold, wide enough for any road vehicle; trialfit
#     figures prints them
#   outcomes:
#   - met
#   - not met
#   reasons:
#     outside: no figure is computed from it
#   remedy: look at the number and its unit again, on the vehicle or its paper
#   reviewed: 2026-11-25
#   since: 0.1.0
#   waivable: true
package rules.records.possible_values

import data.lib.judge

findings := judge.possible
