package lib.judge

# in_region: the vehicle is to be registered in one of the regions named, or
# somewhere that lies in one of them.
in_region(codes) := {"state": "unknown", "because": ["registration.region"]} if {
	count(input.regions) == 0
} else := {"state": _listed[count({region.code | some region in input.regions} & codes) > 0], "because": ["registration.region"]}
