# METADATA
# title: mounts were welded with the full weight on
# description: >-
#   Engine, gearbox, accessories and fluids sat on the mounts, springs settled, before the
#   mounts were welded. Welded under a bare block they sit a finger lower in the end: the
#   fan meets the shroud and the shaft angles are gone.
# custom:
#   level: should
#   hold: install
#   basis: common-practice
#   source: >-
#     common practice: tack first, hang everything on, look again, weld last
#   outcomes:
#   - met
#   - not met
#   - unproven
#   - not applicable
#   remedy: >-
#     hang everything on, let it settle, and measure fan, sump and shaft angles again; cut
#     the tacks where they are off
#   caution: >-
#     disconnect batteries and control units before welding; drilling and welding of frames
#     is restricted by their makers and, in places, by law
#   reviewed: 2026-11-25
#   since: 0.1.0
#   waivable: true
package rules.frame.mounts_under_load

import data.lib.judge

applies := judge.when_listed("build.frame.welds")

findings contains judge.one_of("build.frame.mounts_loaded", {true})
