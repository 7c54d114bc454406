# METADATA
# title: the clutch disc was centred before the bell closed
# description: >-
#   The disc was centred on the pilot bearing with an aligning shaft before the gearbox went
#   on. Forced home off centre, the gearbox hangs on the disc hub and bends it.
# custom:
#   level: should
#   hold: install
#   basis: common-practice
#   source: >-
#     common practice: centre the disc with an aligning shaft, and never draw the bell shut
#     with its bolts
#   outcomes:
#   - met
#   - not met
#   - unproven
#   - not applicable
#   remedy: >-
#     take the gearbox back, centre the disc and close the gap by hand
#   caution: >-
#     a gearbox on a jack tips: strap it, and keep hands out of the gap
#   reviewed: 2026-11-25
#   since: 0.1.0
#   waivable: true
package rules.hydraulics.clutch_aligned

import data.lib.judge

applies := judge.all_of([
	judge.when_there("build.hydraulics.clutch"),
	judge.unless("build.transmission.type", {"automatic"}),
])

findings contains judge.one_of("build.hydraulics.clutch.aligned", {true})
