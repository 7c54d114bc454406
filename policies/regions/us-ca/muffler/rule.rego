# METADATA
# title: an adequate muffler is fitted and can not be bypassed
# description: >-
#   Every registered vehicle with a combustion engine has an adequate muffler in constant
#   operation, and no cutout or bypass. The turbocharger is not a muffler.
# related_resources:
# - ref: https://www.legalfina.com/en/laws/ca/vehicle/equipment_of_vehicles/other_equipment/exhaust_systems
#   description: Vehicle Code 27150 to 27159
# custom:
#   level: must
#   hold: inspection
#   basis: statute
#   source: Vehicle Code 27150(a)
#   outcomes:
#   - met
#   - not met
#   - unproven
#   remedy: fit a muffler of the bore of the exhaust, and weld up any cutout
#   reviewed: 2026-11-25
#   since: 0.1.0
#   waivable: true
package regions["us-ca"].muffler

import data.lib.judge

findings contains judge.one_of("build.exhaust.muffler", {true})
