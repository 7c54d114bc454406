# METADATA
# title: exhaust gas leaves clear of the cab and muffled
# description: >-
#   The tailpipe ends past the cab, clear of openings and fuel, and the exhaust goes through
#   a muffler. Gas that is drawn into the cab kills.
# custom:
#   level: should
#   hold: road-test
#   basis: common-practice
#   source: >-
#     common practice: the tailpipe ends past the occupied body; local rules decide where it
#     may end and how loud it may be
#   outcomes:
#   - met
#   - not met
#   - unproven
#   remedy: >-
#     run the tailpipe past the occupied body, away from fuel and openings, and fit a
#     muffler
#   caution: >-
#     exhaust gas kills without smell: check the cab with the windows shut before a long
#     drive
#   reviewed: 2026-11-25
#   since: 0.1.0
#   waivable: true
package rules.exhaust.outlet_clear

import data.lib.judge

findings contains judge.one_of("build.exhaust.outlet_clear", {true})

findings contains judge.one_of("build.exhaust.muffler", {true})
