# METADATA
# title: the steering touches nothing anywhere in its travel
# description: >-
#   Shaft, linkage and front tyres keep off engine, exhaust, mounts and lines at full bump
#   and both full locks, the engine rolled towards them. Each alone may clear; the three
#   together bind the wheel in a bend.
# custom:
#   level: must
#   hold: install
#   basis: physics
#   source: >-
#     gaps measured with full bump, full lock and engine roll at once
#   needs_basis:
#     install: measured
#   outcomes:
#   - met
#   - not met
#   - unproven
#   remedy: >-
#     move the exhaust, mount or line, route the shaft another way with a support, or limit
#     the roll of the engine
#   caution: >-
#     a steering that binds once kills: turn it lock to lock at full bump before the vehicle
#     rolls; its parts come under local codes, and welding on them is for licensed hands
#   reviewed: 2026-11-25
#   since: 0.1.0
#   waivable: false
package rules.steering.touches_nothing

import data.lib.judge

_gaps := {"build.steering.shaft_gap", "build.steering.linkage_gap", "build.steering.tyre_gap"}

findings contains judge.limit_min(gap, "limits.steering.gap_least") if some gap in _gaps
