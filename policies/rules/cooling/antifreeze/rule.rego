# METADATA
# title: the coolant is between 40 and 60 per cent antifreeze
# description: >-
#   By refractometer the coolant holds 40 to 60 per cent antifreeze. Plain water corrodes,
#   boils earlier and pits the liners of a diesel; too much antifreeze cools worse and gels.
#   After the many fillings of a swap nobody knows what is in it.
# related_resources:
# - ref: https://experts123.com/q/what-does-antifreeze-do-and-what-are-cummins-recommendations-on-concentration.html
#   description: an engine maker's advice on antifreeze, as passed on there
# custom:
#   level: should
#   hold: road-test
#   basis: manufacturer
#   source: >-
#     an engine maker's advice: 40 to 60 per cent; another accepts 30 where it never freezes
#   outcomes:
#   - met
#   - not met
#   - unproven
#   - not applicable
#   remedy: >-
#     drain, fill a mixture made up beforehand from soft water and the kind that the engine's
#     maker asks for, and measure again after a run
#   caution: >-
#     antifreeze is sweet and poisonous: catch it, keep it from children and animals; let the
#     engine cool and lose its pressure before cap or hose is opened; coolant scalds
#   reviewed: 2026-11-25
#   since: 0.1.0
#   waivable: true
package rules.cooling.antifreeze

import data.lib.judge

applies := judge.when_there("build.cooling")

findings contains judge.within("build.cooling.glycol", "limits.cooling.antifreeze_low", "limits.cooling.antifreeze_high")
