# METADATA
# title: the weighed rear axle is within its rating
# description: >-
#   The newest weighing of the rear axle of the finished vehicle with all fluids is within
#   the plate. Sums are for planning; the authority believes the weighbridge.
# custom:
#   level: must
#   hold: inspection
#   basis: manufacturer
#   source: >-
#     gross axle weight rating on the chassis maker's certification label, against a
#     weighing of the finished vehicle
#   needs_basis:
#     inspection: measured with evidence
#   outcomes:
#   - met
#   - not met
#   - unproven
#   remedy: >-
#     weigh each axle with all fluids in and nobody on board, and put the ticket with the
#     evidence
#   reviewed: 2026-11-25
#   since: 0.1.0
#   waivable: false
package rules.mass.rear_weighbridge

import data.lib.judge

findings contains judge.about(
	"chassis.ratings.rear_axle",
	judge.limit_max(judge.newest("rear_axle_mass", "kerb"), "build.chassis.ratings.rear_axle"),
)
