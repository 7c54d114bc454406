# METADATA
# title: particulars and mass on the register are put right
# description: >-
#   Engine number, fuel and unladen mass stand on the register. The regulations have
#   provisions on mass measuring certificates and on when a certification of roadworthiness
#   is asked, whose text was not read.
# related_resources:
# - ref: http://acts.co.za/national-road-traffic-act-1996/r225_chapter_iii_part_iii__general.php
#   description: headings of chapter III, part III
# custom:
#   level: note
#   hold: inspection
#   basis: second-hand
#   source: >-
#     headings of regulations 52, 66, 68 and 138 of the National Road Traffic Regulations,
#     2000
#   outcomes:
#   - met
#   - unproven
#   - not applicable
#   remedy: >-
#     weigh the finished vehicle axle by axle and take ticket, clearance and registration
#     certificate to the office
#   question:
#     ask: >-
#       Which particulars have to be changed for this engine, and is a mass measuring
#       certificate or a roadworthiness test asked?
#     office: registering authority
#   reviewed: 2026-11-25
#   since: 0.1.0
#   waivable: true
package regions.za.register_entry

import data.lib.judge

applies := judge.when_differs("build.outgoing_engine.family", "build.engine.family")
