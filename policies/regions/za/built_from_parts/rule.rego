# METADATA
# title: affidavit and receipts of a built-up vehicle are there
# description: >-
#   A vehicle built up from parts by somebody who is not a registered builder is registered
#   with an affidavit on form SOA that states the parts and whom they came from, the
#   receipts, the deregistration where a scrapped vehicle was used, and a police clearance.
#   Receipts can not be had afterwards.
# related_resources:
# - ref: https://www.acts.co.za/national-road-traffic-act-1996/r225_9__additional_requirement
#   description: National Road Traffic Regulations, 2000, regulation 9
# custom:
#   level: note
#   hold: plan
#   basis: regulation
#   source: National Road Traffic Regulations, 2000, regulation 9, read on 2026-11-25
#   outcomes:
#   - met
#   - unproven
#   - not applicable
#   remedy: >-
#     keep a receipt with name and address for every part with a number, from the first day
#   question:
#     ask: >-
#       Is this vehicle built up from parts to regulation 9, and are affidavit, receipts and
#       deregistration complete?
#     office: registering authority
#   reviewed: 2026-11-25
#   since: 0.1.0
#   waivable: true
package regions.za.built_from_parts

import data.lib.judge

applies := judge.when("build.registration.plate_class", {"assembled"})
