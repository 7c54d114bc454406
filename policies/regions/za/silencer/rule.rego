# METADATA
# title: an efficient silencer is fitted
# description: >-
#   No vehicle is driven on a public road without an efficient silencer through which all
#   exhaust passes; a device that leads it past the silencer is forbidden. The turbocharger
#   is not taken for a silencer.
# related_resources:
# - ref: https://www.acts.co.za/national-road-traffic-act-1996/r225_209__exhaust_silencers_an
#   description: National Road Traffic Regulations, 2000, regulation 209
# custom:
#   level: must
#   hold: inspection
#   basis: regulation
#   source: >-
#     National Road Traffic Regulations, 2000, regulation 209(a) and (b), read on 2026-11-25
#   outcomes:
#   - met
#   - not met
#   - unproven
#   remedy: fit a silencer of the bore of the exhaust, and weld up any bypass
#   reviewed: 2026-11-25
#   since: 0.1.0
#   waivable: true
package regions.za.silencer

import data.lib.judge

findings contains judge.one_of("build.exhaust.muffler", {true})
