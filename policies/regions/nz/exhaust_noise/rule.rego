# METADATA
# title: the exhaust is no louder than the original, or is metered
# description: >-
#   The exhaust of a car, an off-road passenger vehicle or a light goods vehicle must be no
#   louder than, or similar to, that of such a vehicle as it was made, or pass a metered
#   stationary test, which only a low volume vehicle certifier does. A draft of 2009 spoke
#   of 95 dB(A) for vehicles made before 1 January 1985 and of 90 dB(A) for later ones after
#   a failed test; the table in force was not read. A vehicle ordered off the road needs a
#   certificate dated after the order.
# related_resources:
# - ref: https://vehicleinspection.nzta.govt.nz/virms/in-service-wof-and-cof/general/exhaust?SQ_DESIGN_NAME=print&SQ_PAINT_LAYOUT_NAME=print
#   description: inspection manual, exhaust, as at April 2024
# - ref: http://www.nzta.govt.nz/vehicles/warrants-and-certificates/warrant-of-fitness/noise-tests-for-exhausts/
#   description: the agency on noise tests
# custom:
#   level: note
#   hold: inspection
#   basis: agency-guidance
#   source: >-
#     inspection manual 11-1, reasons for rejection 2 and 7, read up to the noise limits;
#     figures from a draft of 2009
#   outcomes:
#   - met
#   - unproven
#   - not applicable
#   remedy: have it metered before the inspection where the sound has changed
#   caution: wear hearing protection; the vehicle stands braked and chocked, in the open
#   question:
#     ask: >-
#       Which stationary limit applies by date of manufacture, and has the vehicle passed
#       the metered test or none needed?
#     office: low volume vehicle certifier
#   reviewed: 2026-11-25
#   since: 0.1.0
#   waivable: true
package regions.nz.exhaust_noise

import data.lib.judge

applies := judge.all_of([
	judge.when_differs("build.outgoing_engine.family", "build.engine.family"),
	judge.negate(judge.when("build.chassis.approval_category", {"M2", "N2", "N2G", "NB1", "NB2"})),
])
