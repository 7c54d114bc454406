# METADATA
# title: vehicle and engine can be told apart from others
# description: >-
#   The manifest names the vehicle identification number from the start and the engine
#   number once the engine is in. A file without them could be about any vehicle.
# custom:
#   level: must
#   hold: plan
#   basis: own-record
#   source: >-
#     what an inspector compares first: the numbers stamped on frame and block
#   needs_basis:
#     inspection: documented with evidence
#   outcomes:
#   - met
#   - unproven
#   remedy: read the number off the plate and off the block, and photograph both
#   reviewed: 2026-11-25
#   since: 0.1.0
#   waivable: true
package rules.records.identity

import data.lib.judge

findings contains judge.present_at("build.chassis.vin", "plan")

findings contains judge.present_at("build.engine.number", "install")
