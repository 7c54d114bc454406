# METADATA
# title: a certifier has said whether the swap is certified
# description: >-
#   An engine modification that table 13-1-1 does not exclude needs a low volume vehicle
#   certifier, who works by the standard on engine and drivetrain conversions and may draw
#   in brakes, suspension and wheels. The table and the standard were not read. About 20 %
#   more power as a bound is from memory and is not applied.
# related_resources:
# - ref: https://vehicleinspection.nzta.govt.nz/virms/in-service-wof-and-cof/general/miscellaneous-items/engine-and-transmission
#   description: inspection manual, engine and transmission
# - ref: https://lvvta.org.nz/documents.html
#   description: low volume vehicle standards
# custom:
#   level: note
#   hold: plan
#   basis: agency-guidance
#   source: >-
#     inspection manual 13-1, reason for rejection 9 with its notes, read on 2026-11-25;
#     list of standards 85-40(02), 35-00(02), 195-00(02), 205-00(02)
#   outcomes:
#   - met
#   - unproven
#   - not applicable
#   remedy: >-
#     show the plan to the certifier before buying, with mass, power and torque of both
#     engines
#   question:
#     ask: >-
#       Does table 13-1-1 exclude this engine change, and if not, which standards and stages
#       of inspection does the certifier ask for?
#     office: low volume vehicle certifier
#   reviewed: 2026-11-25
#   since: 0.1.0
#   waivable: true
package regions.nz.certifier_consulted

import data.lib.judge

applies := judge.when_differs("build.outgoing_engine.family", "build.engine.family")
