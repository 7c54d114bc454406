# METADATA
# title: the hose to the pump can not be sucked flat
# description: >-
#   A spring inside, or a wall too stiff to flatten, keeps the lower hose open. At speed the
#   pump draws it flat, the engine boils on the highway, and at idle in the shop everything
#   looks right.
# custom:
#   level: should
#   hold: install
#   basis: common-practice
#   source: >-
#     common practice: a spring in the suction hose, or hose with a reinforced wall
#   outcomes:
#   - met
#   - not met
#   - unproven
#   - not applicable
#   remedy: >-
#     fit a moulded hose with its spring, or hose with wire in the wall; corrugated universal
#     hose only for the way home
#   caution: >-
#     let the engine cool and lose its pressure before cap or hose is opened; coolant scalds
#   reviewed: 2026-11-25
#   since: 0.1.0
#   waivable: true
package rules.cooling.lower_hose

import data.lib.judge

applies := judge.when_there("build.cooling")

findings contains judge.one_of("build.cooling.lower_hose_stiff", {true})
