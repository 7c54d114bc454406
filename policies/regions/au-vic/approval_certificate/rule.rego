# METADATA
# title: the approval certificate is issued
# description: >-
#   The certificate of the scheme is what the state accepts as evidence that a modified
#   vehicle was inspected and complies. Without it the vehicle is stopped at its next
#   roadworthiness inspection.
# related_resources:
# - ref: https://www.scribd.com/document/718909935/PTVH5189-STU-02895-Vehicle-Standards-Information-8-v10-WEB-FA-1
#   description: Vehicle Standards Information 8, October 2021, copy
# custom:
#   level: note
#   hold: inspection
#   basis: agency-guidance
#   source: Vehicle Standards Information 8 of October 2021, on the scheme, read in a copy
#   outcomes:
#   - met
#   - unproven
#   - not applicable
#   remedy: have every modification of the build on one certificate
#   question:
#     ask: >-
#       Is the approval certificate issued, what is its number, and does it name every
#       modification?
#     office: Victoria, signatory of the Vehicle Assessment Signatory Scheme
#   reviewed: 2026-11-25
#   since: 0.1.0
#   waivable: true
package regions["au-vic"].approval_certificate

import data.lib.judge

applies := judge.when_differs("build.outgoing_engine.family", "build.engine.family")
