# METADATA
# title: the exhaust has a means of sound reduction
# description: >-
#   A vehicle without a means of sound reduction in its exhaust is rejected at inspection.
#   The turbocharger alone is not taken for one.
# related_resources:
# - ref: https://vehicleinspection.nzta.govt.nz/virms/in-service-wof-and-cof/general/exhaust?SQ_DESIGN_NAME=print&SQ_PAINT_LAYOUT_NAME=print
#   description: inspection manual, exhaust, as at April 2024
# custom:
#   level: should
#   hold: inspection
#   basis: agency-guidance
#   source: >-
#     inspection manual 11-1, reason for rejection 1, as at April 2024, read on 2026-11-25;
#     that a turbocharger does not count is taken, not read
#   outcomes:
#   - met
#   - not met
#   - unproven
#   remedy: fit a muffler of the bore of the exhaust
#   reviewed: 2026-11-25
#   since: 0.1.0
#   waivable: true
package regions.nz.muffler

import data.lib.judge

findings contains judge.one_of("build.exhaust.muffler", {true})
