# METADATA
# title: plate ratings are supported by evidence
# description: >-
#   The ratings that everything else is compared with are shown by a photograph or copy of
#   the plate, and the paper says the same. An inspector reads the plate himself; a rating
#   copied wrong undoes every figure after it.
# custom:
#   level: must
#   hold: inspection
#   basis: own-record
#   source: >-
#     what an inspector compares: the ratings in the file against the plate on the vehicle
#   outcomes:
#   - met
#   - not met
#   - unproven
#   remedy: >-
#     photograph the plate, list the photograph under evidence with what it shows, and name
#     it at the rating
#   reviewed: 2026-11-25
#   since: 0.1.0
#   waivable: true
package rules.records.plates_supported

import data.lib.judge

_plates := [
	"build.chassis.ratings.front_axle",
	"build.chassis.ratings.rear_axle",
	"build.chassis.ratings.gross",
]

findings contains judge.supported(plate) if some plate in _plates
