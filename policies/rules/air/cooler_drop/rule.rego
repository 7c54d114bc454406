# METADATA
# title: little boost is lost in the charge-air cooler
# description: >-
#   From compressor to manifold no more than 14 kPa (4 inHg) of boost is lost at full load,
#   cooler and pipes together. A cooler from a small car, or hoses with tight bends, makes
#   the compressor work for nothing and the charge hotter.
# custom:
#   level: should
#   hold: road-test
#   basis: memory
#   source: >-
#     engine makers' installation bulletins, from memory: 10 to 14 kPa (3 to 4 inHg), pipes
#     included
#   needs_basis:
#     road-test: measured
#   outcomes:
#   - met
#   - not met
#   - unproven
#   - not applicable
#   remedy: >-
#     fit a cooler with larger tubes or shorter ones side by side, and smooth bends; look for
#     oil and a kinked hose first
#   caution: >-
#     let exhaust and charge pipes cool before working on them; run engines where exhaust gas
#     is drawn off
#   reviewed: 2026-11-25
#   since: 0.1.0
#   waivable: true
package rules.air.cooler_drop

import data.lib.judge

applies := judge.when("build.engine.induction", {"turbocharged-intercooled"})

findings contains judge.limit_max("build.charge_air.cooler_drop", "limits.air.cooler_drop")
