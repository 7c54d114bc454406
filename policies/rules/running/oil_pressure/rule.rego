# METADATA
# title: the warm engine holds its oil pressure
# description: >-
#   Warm at idle and at governed speed, or at the speed that the maker of an engine
#   without a governor names, the oil pressure is at least what he asks. A used engine that is low here is turned back in the shop, not on
#   the motorway with its bearings gone.
# custom:
#   level: must
#   hold: road-test
#   basis: manufacturer
#   source: >-
#     least oil pressures from the engine's maker, against a reading of this engine warm
#   needs_basis:
#     road-test: measured
#   outcomes:
#   - met
#   - not met
#   - unproven
#   - not applicable
#   remedy: >-
#     compare with a mechanical gauge; then grade of oil, relief valve, pick-up and
#     bearings, in this order
#   caution: >-
#     chock the wheels, keep everybody out of the line of belts, fan and wheels, and run
#     the engine where its exhaust leaves the building
#   reviewed: 2026-11-25
#   since: 0.1.0
#   waivable: true
package rules.running.oil_pressure

import data.lib.judge

# Many makers of petrol engines print one of the two, some print neither.
applies := judge.any_of([
	judge.when_there("build.engine.oil_pressure_idle"),
	judge.when_there("build.engine.oil_pressure_governed"),
])

findings contains judge.about(
	"engine.oil_pressure_idle",
	judge.limit_min(judge.newest("oil_pressure", "idle"), "build.engine.oil_pressure_idle"),
) if {
	not judge.is_none("build.engine.oil_pressure_idle")
}

findings contains judge.about(
	"engine.oil_pressure_governed",
	judge.limit_min(judge.newest("oil_pressure", "governed-speed"), "build.engine.oil_pressure_governed"),
) if {
	not judge.is_none("build.engine.oil_pressure_governed")
}
