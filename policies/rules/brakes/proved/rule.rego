# METADATA
# title: the brake and its reserve were proved at walking pace
# description: >-
#   Before the first drive the service brake was proved at walking pace, and with the engine
#   stopped for the assisted stops that its reserve must give. Brakes fail on the first
#   hill, not in the shop.
# custom:
#   level: must
#   hold: road-test
#   basis: own-record
#   source: >-
#     what the hold point road-test is for: nobody drives before the brake is proved
#   outcomes:
#   - met
#   - not met
#   - unproven
#   - not applicable
#   reasons:
#     future: the day lies ahead, so nothing has been proved yet
#   remedy: >-
#     prove the brake at walking pace on closed ground, then with the engine stopped, and
#     write the day down
#   caution: >-
#     brakes are worked on and proved by who is trained for it, where local law asks for it;
#     nobody drives on an unproved brake beyond walking pace on closed ground
#   reviewed: 2026-11-25
#   since: 0.1.0
#   waivable: false
package rules.brakes.proved

import data.lib.judge

findings contains judge.dated_at("build.hydraulics.brakes.proved", "road-test")
