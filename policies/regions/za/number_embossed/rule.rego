# METADATA
# title: an engine without a number gets one first
# description: >-
#   An engine whose number is missing or can not be read is not cleared as it stands. A
#   number is embossed by the authority, against a fee, and by nobody else: a number of
#   one's own making is the end of the vehicle.
# related_resources:
# - ref: https://www.westerncape.gov.za/tpw/vehicle-clearance-engine-and-chassis-changes
#   description: Western Cape government on clearance
# custom:
#   level: note
#   hold: plan
#   basis: agency-guidance
#   source: >-
#     page of the Western Cape government, which names the fee for a number that is
#     embossed; that nobody else may do it is not on that page
#   outcomes:
#   - met
#   - unproven
#   - not applicable
#   remedy: leave such an engine where it is unless the police say how it gets a number
#   question:
#     ask: May this engine be cleared, and who embosses a number on it?
#     office: South African Police Service, vehicle clearance unit
#   reviewed: 2026-11-25
#   since: 0.1.0
#   waivable: true
package regions.za.number_embossed

import data.lib.judge

applies := judge.when("build.engine.number", {"none"})
