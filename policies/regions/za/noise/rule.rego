# METADATA
# title: the stationary noise is within the national standard
# description: >-
#   A vehicle that exceeds the limits of the standard on stationary noise when tested may
#   not be driven on a public road. The limits themselves were not read.
# related_resources:
# - ref: https://www.acts.co.za/national-road-traffic-act-1996/r225_209__exhaust_silencers_an
#   description: National Road Traffic Regulations, 2000, regulation 209
# custom:
#   level: note
#   hold: inspection
#   basis: regulation
#   source: >-
#     National Road Traffic Regulations, 2000, regulation 209(e), on SABS 0181, read on
#     2026-11-25; the standard was not read
#   outcomes:
#   - met
#   - unproven
#   - not applicable
#   remedy: >-
#     have the level measured by the method of the standard where the sound has changed
#   caution: wear hearing protection; the vehicle stands braked and chocked, in the open
#   question:
#     ask: >-
#       Which limit of the stationary standard applies to this vehicle, and is it met with
#       this engine?
#     office: testing station
#   reviewed: 2026-11-25
#   since: 0.1.0
#   waivable: true
package regions.za.noise

import data.lib.judge

applies := judge.when_differs("build.outgoing_engine.family", "build.engine.family")
