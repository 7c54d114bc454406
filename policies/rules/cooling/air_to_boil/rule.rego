# METADATA
# title: the coolant does not boil at the highest altitude
# description: >-
#   By the same test, the coolant stays below its boiling point on the hottest day at the
#   highest altitude. Up there the cap holds less over thinner air, and thinner air carries
#   less away: what stood the valley boils on the pass.
# custom:
#   level: should
#   hold: road-test
#   basis: physics
#   source: >-
#     boiling point by IAPWS-IF97 and Raoult's law, air by the US Standard Atmosphere 1976;
#     air-to-boil as SAE J1393 defines it, seen second-hand
#   outcomes:
#   - met
#   - not met
#   - unproven
#   - not applicable
#   remedy: >-
#     fit a cap of a higher pressure if radiator and heater bear it, bring the antifreeze to
#     half, or win cooling as for the hottest day
#   caution: >-
#     let the engine cool and lose its pressure before cap or hose is opened; coolant scalds
#   reviewed: 2026-11-25
#   since: 0.1.0
#   waivable: true
package rules.cooling.air_to_boil

import data.lib.judge

applies := judge.when_there("build.cooling")

findings contains judge.about(
	"cooling.cap_pressure",
	judge.limit_min("figures.cooling.air_to_boil", "build.registration.ambient"),
)
