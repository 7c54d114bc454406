package lib.judge

# rated_or_sold: a part of the driveline judged against the rating of its maker,
# or, where that is missing, by what the chassis was sold with: the engine has no
# more torque than one that the maker put before the same driveline.
rated_or_sold(rated) := _sold[0] if {
	rated.reason == "missing"
	count(_sold) > 0
} else := rated

_sold := [finding |
	some id in each("build.chassis.engine_options")
	one_of(of(id, "build.chassis.engine_options.*.driveline_kept"), {true}).outcome == "met"
	finding := limit_max("build.engine.peak_torque", of(id, "build.chassis.engine_options.*.peak_torque"))
	finding.outcome == "met"
]
