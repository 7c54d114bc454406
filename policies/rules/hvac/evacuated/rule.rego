# METADATA
# title: the circuit was evacuated and held its vacuum
# description: >-
#   A circuit that was opened stood under the vacuum pump long enough to boil the water out,
#   and with the pump shut off it lost no more than a small leak would. What leaks in now
#   leaks out next week, at the price of a charge.
# related_resources:
# - ref: https://charm.li/GMC%20Truck/1992/Yukon%20V8-393%206.5L%20DSL%20Turbo/Repair%20and%20Diagnosis/Heating%20and%20Air%20Conditioning/Service%20and%20Repair/Discharging%20%26%20Evacuating%20System/Evacuate%20System
#   description: workshop manual of a diesel truck, evacuating the system
# custom:
#   level: should
#   hold: road-test
#   basis: handbook
#   source: >-
#     workshop manuals of several makers: 15 to 30 minutes, longer where parts were renewed;
#     a rise of no more than 1 inHg in 4 to 5 minutes
#   outcomes:
#   - met
#   - not met
#   - unproven
#   - not applicable
#   remedy: >-
#     leave the pump on longer with the engine bay warm, find the leak with nitrogen and soap
#     or a detector, and evacuate again
#   caution: >-
#     refrigerant blinds, freezes and displaces air: goggles, gloves, open doors and no
#     flame; only a certified technician recovers and charges it, as local law says
#   reviewed: 2026-11-25
#   since: 0.1.0
#   waivable: true
package rules.hvac.evacuated

import data.lib.judge

applies := judge.when("build.hvac.refrigerant_opened", {true})

findings contains judge.limit_min("build.hvac.evacuated", "limits.hvac.evacuation")

findings contains judge.limit_max("build.hvac.vacuum_lost", "limits.hvac.vacuum_lost")
