# METADATA
# title: the region's requirements were examined
# description: >-
#   A pack exists for the region in which the vehicle will be registered. Without one
#   nothing about registration was looked at, and a finished vehicle that can't be
#   registered is the dearest mistake in this trade.
# custom:
#   level: must
#   hold: plan
#   basis: own-record
#   source: the packs loaded for this run
#   outcomes:
#   - met
#   - unproven
#   remedy: name the region, or load a pack that examines it; ask the authority in any case
#   reviewed: 2026-11-25
#   since: 0.1.0
#   waivable: false
package rules.registration.region_examined

import data.lib.judge

findings contains judge.examined
