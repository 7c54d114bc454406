# METADATA
# title: a commercial vehicle is registered by its new weight
# description: >-
#   A heavier engine and what comes with it can move a commercial vehicle to another class
#   of unladen weight, which is reported with a weight certificate.
# custom:
#   level: note
#   hold: inspection
#   basis: second-hand
#   source: >-
#     reference notes on Vehicle Code 9406 and the registration manual, with form REG 256
#     and a weight certificate; not read again
#   outcomes:
#   - met
#   - unproven
#   - not applicable
#   remedy: weigh the finished vehicle at a public scale and take the certificate along
#   question:
#     ask: >-
#       Does the unladen weight of the finished vehicle change its registration, and is the
#       weight certificate filed?
#     office: California Department of Motor Vehicles
#   reviewed: 2026-11-25
#   since: 0.1.0
#   waivable: true
package regions["us-ca"].weight_class

import data.lib.judge

applies := judge.when("build.registration.use", {"commercial"})
