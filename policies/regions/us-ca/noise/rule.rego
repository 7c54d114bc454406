# METADATA
# title: exhaust noise below 6,000 lb is at most 95 dB(A)
# description: >-
#   A changed exhaust on a vehicle of less than 6,000 lb complies at 95 dB(A) or less by
#   the stationary method. The figures of 27204 are taken in passing, at 50 ft, and are
#   never compared with it. A louder one is not shown to comply; the bound is a way to
#   comply, not the only one.
# related_resources:
# - ref: https://crowdsourcelawyers.com/california-statutes/california-statutes/modified-exhaust-cvc-2/?s=
#   description: Vehicle Code 27151
# - ref: https://self-law.org/code/ca/vehicle-code/27150-2-2
#   description: Vehicle Code 27150.2, the newer text
# custom:
#   level: should
#   hold: inspection
#   basis: statute
#   source: >-
#     Vehicle Code 27151(b), stationary by SAE J1169; 27150.2 names the current SAE
#     standard
#   needs_basis:
#     inspection: measured with evidence
#   outcomes:
#   - met
#   - not met
#   - unproven
#   - not applicable
#   remedy: fit a quieter muffler and have the level taken again by the stationary method
#   caution: ear protection for whoever holds the meter
#   reviewed: 2026-11-25
#   since: 0.1.0
#   waivable: true
package regions["us-ca"].noise

import data.lib.judge

applies := judge.negate(judge.when_min("build.chassis.ratings.gross", "limits.us_ca.noise_gross"))

findings contains judge.limit_max("build.engine.noise", "limits.us_ca.noise_light")
