# METADATA
# title: the cap keeps boiling away from the engine limit
# description: >-
#   At the highest altitude the coolant boils well above the highest temperature that the
#   engine's maker allows. Steam pockets in the head come before the gauge shows them, and a
#   soft cap from a car lets the coolant go at a temperature the engine is made for.
# custom:
#   level: should
#   hold: install
#   basis: common-practice
#   source: >-
#     common practice: 10 K between highest coolant temperature and boiling point; boiling
#     point by IAPWS-IF97 and Raoult's law
#   outcomes:
#   - met
#   - not met
#   - unproven
#   - not applicable
#   remedy: >-
#     fit the cap that the engine's maker names, if radiator, heater and hoses bear its
#     pressure, and fill half antifreeze
#   caution: >-
#     let the engine cool and lose its pressure before cap or hose is opened; coolant scalds
#   reviewed: 2026-11-25
#   since: 0.1.0
#   waivable: true
package rules.cooling.boil_margin

import data.lib.judge

applies := judge.when_there("build.cooling")

findings contains judge.about(
	"cooling.cap_pressure",
	judge.limit_min("figures.cooling.boil_margin", "limits.cooling.boil_margin"),
)
