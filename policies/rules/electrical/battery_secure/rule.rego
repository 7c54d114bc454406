# METADATA
# title: the battery is held down and covered
# description: >-
#   Every battery is clamped in a tray and its live terminals are covered. A loose battery
#   shorts against the bonnet on the first washboard road.
# custom:
#   level: must
#   hold: first-start
#   basis: own-record
#   source: >-
#     what the hold point first-start is for: nothing may short or come loose when the
#     engine first turns
#   outcomes:
#   - met
#   - not met
#   - unproven
#   remedy: clamp the battery in its tray and cover the terminals
#   caution: >-
#     a short across the terminals melts tools and starts fires: cover them before anything
#     else
#   reviewed: 2026-11-25
#   since: 0.1.0
#   waivable: false
package rules.electrical.battery_secure

import data.lib.judge

findings contains judge.one_of("build.electrical.battery.restrained", {true})

findings contains judge.one_of("build.electrical.battery.terminals_covered", {true})
