# METADATA
# title: the compliance certificate is issued
# description: >-
#   The certifier inspects the vehicle and decides that it, or the modification, complies
#   with the vehicle standards. A certificate that was cancelled, or of another
#   modification, counts for nothing.
# related_resources:
# - ref: https://zoelaw.ai/legislation/road-transport-vehicle-registration-regulation-2017/sections/84
#   description: >-
#     Road Transport (Vehicle Registration) Regulation 2017, clause 84, copy of the version
#     of April 2026
# - ref: https://zoelaw.ai/legislation/road-transport-vehicle-registration-regulation-2017/sections/85
#   description: the same, clause 85
# custom:
#   level: note
#   hold: inspection
#   basis: regulation
#   source: >-
#     clauses 84(2) and 85(1) and (2) of the Road Transport (Vehicle Registration)
#     Regulation 2017, read on 2026-11-25 in a copy
#   outcomes:
#   - met
#   - unproven
#   - not applicable
#   remedy: >-
#     drive on the road only to the inspection, and only as far as the regulation allows it;
#     have gearbox, brakes and exhaust on the certificate
#   question:
#     ask: >-
#       Is the compliance certificate issued for this engine change and all that goes with
#       it, or is none needed?
#     office: New South Wales, licensed certifier, or Transport for NSW
#   reviewed: 2026-11-25
#   since: 0.1.0
#   waivable: true
package regions["au-nsw"].compliance_certificate

import data.lib.judge

applies := judge.when_differs("build.outgoing_engine.family", "build.engine.family")
