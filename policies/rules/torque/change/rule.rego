# METADATA
# title: brakes and driveline were made for as much engine
# description: >-
#   Power and torque of the engine are at most a fifth above those of the outgoing one.
#   Beyond that, brakes, driveline and tyres that suited the old engine have to be looked at
#   anew, and many authorities ask for it. Where the maker sold this chassis with these
#   brakes and an engine of as much power and torque, he has looked at them.
# custom:
#   level: should
#   hold: plan
#   basis: memory
#   source: >-
#     from memory of modification codes, which review brakes above 120 per cent; the local
#     authority knows its own limit
#   outcomes:
#   - met
#   - not met
#   - unproven
#   - not applicable
#   remedy: >-
#     have brakes, driveline and tyres reviewed for the new power, and ask the authority
#     what it wants to see
#   caution: >-
#     brakes that fade on a long grade kill: prove them laden and with care, under local
#     codes
#   reviewed: 2026-11-25
#   since: 0.1.0
#   waivable: true
package rules.torque.change

import data.lib.judge

_as_strong(id) if {
	judge.one_of(judge.of(id, "build.chassis.engine_options.*.brakes_kept"), {true}).outcome == "met"
	judge.limit_max("build.engine.rated_power", judge.of(id, "build.chassis.engine_options.*.rated_power")).outcome == "met"
	judge.limit_max("build.engine.peak_torque", judge.of(id, "build.chassis.engine_options.*.peak_torque")).outcome == "met"
}

_sold_as_strong := [id | some id in judge.each("build.chassis.engine_options"); _as_strong(id)]

findings contains judge.about(
	"engine.rated_power",
	judge.limit_max("figures.torque.power_ratio", "limits.torque.change"),
) if {
	count(_sold_as_strong) == 0
}

findings contains judge.about(
	"engine.peak_torque",
	judge.limit_max("figures.torque.torque_ratio", "limits.torque.change"),
) if {
	count(_sold_as_strong) == 0
}

findings contains judge.about("engine", judge.unasked("build.engine.rated_power")) if some _ in _sold_as_strong
