# METADATA
# title: the paper for the finished change is there
# description: >-
#   After a roadworthy inspection the state issues a certificate of exemption, which is kept
#   in the vehicle and shown on request. An engine that was an option or standard for this
#   make, model and year goes on the registration by form MR7 instead. Without either the
#   finished vehicle can not be used.
# related_resources:
# - ref: https://www.sa.gov.au/topics/driving-and-transport/vehicles/vehicle-standards-and-modifications/engine-and-exhaust-modifications
#   description: South Australia on engine and exhaust modifications
# - ref: https://vdocuments.site/light-vehicle-modification-sagovau-a-report-from-a-light-vehicle-engineering.html
#   description: fact sheet on light vehicle modification, copy
# custom:
#   level: note
#   hold: inspection
#   basis: agency-guidance
#   source: page of the state on engine and exhaust modifications
#   outcomes:
#   - met
#   - unproven
#   - not applicable
#   remedy: >-
#     book the inspection with the statement of requirements and the engineer's report in
#     hand
#   question:
#     ask: >-
#       Is the certificate of exemption issued for this vehicle, or the change approved on
#       form MR7 for an engine that was an option?
#     office: South Australia, Vehicle Standards
#   reviewed: 2026-11-25
#   since: 0.1.0
#   waivable: true
package regions["au-sa"].change_approved

import data.lib.judge

applies := judge.when_differs("build.outgoing_engine.family", "build.engine.family")
