package lib.judge

# when_zone: the vehicle is to be registered in one of the areas named, however
# its capitals are written and whether or not "county" stands behind it.
when_zone(names) := {"state": _listed[count(inside) > 0], "because": ["registration.zone"]} if {
	zone := record("build.registration.zone").value
	inside := {n | some n in names; _zone(n) == _zone(zone)}
} else := {"state": "unknown", "because": ["registration.zone"]}

_zone(name) := trim_space(trim_suffix(trim_prefix(lower(name), "city of "), " county"))

# in_region: the vehicle is to be registered in one of the regions named, or
# somewhere that lies in one of them.
in_region(codes) := {"state": "unknown", "because": ["registration.region"]} if {
	count(input.regions) == 0
} else := {"state": _listed[count({region.code | some region in input.regions} & codes) > 0], "because": ["registration.region"]}
