# METADATA
# title: the steering keeps half an inch clear
# description: >-
#   Shaft, linkage and front tyres keep 12 mm off engine, exhaust, mounts and lines at full
#   bump and both full locks, the engine rolled towards them. Mounts sag, exhausts grow with
#   heat, and a gap of nothing wears through.
# custom:
#   level: should
#   hold: install
#   basis: common-practice
#   source: >-
#     common practice: half an inch with everything at its worst
#   outcomes:
#   - met
#   - not met
#   - unproven
#   remedy: >-
#     move the exhaust, mount or line, or route the shaft another way with a support
#   caution: >-
#     a steering that binds once kills: turn it lock to lock at full bump before the vehicle
#     rolls; its parts come under local codes, and welding on them is for licensed hands
#   reviewed: 2026-11-25
#   since: 0.1.0
#   waivable: false
package rules.steering.keeps_clear

import data.lib.judge

_gaps := {"build.steering.shaft_gap", "build.steering.linkage_gap", "build.steering.tyre_gap"}

findings contains judge.limit_min(gap, "limits.steering.gap") if some gap in _gaps
