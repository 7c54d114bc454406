# METADATA
# title: looking values up
# description: >-
#   The only place that reads the input document. A path such as
#   "build.chassis.wheelbase", "figures.mass.total" or "limits.mass.axle_margin"
#   names a record; every '*' in it stands for the id of a list item.
package lib.judge

# record returns what stands at a path; what is not there is missing, never undefined.
record(path) := object.get(data.limits, array.slice(steps, 1, count(steps)), {"missing": path}) if {
	startswith(path, "limits.")
	steps := split(path, ".")
}

record(path) := found if {
	not startswith(path, "limits.")
	found := object.get(input, split(path, "."), null)
	found != null
} else := {"missing": _unsaid(split(path, "."))} if {
	not startswith(path, "limits.")
}

# What lies below a place that is missing is missing with it, and is written there.
_unsaid(steps) := place.missing if {
	some i, _ in steps
	place := object.get(input, array.slice(steps, 0, i), {})
	is_string(place.missing)
} else := written(concat(".", steps))

# written turns an input path into the path the builder writes.
written(path) := trim_prefix(path, "build.")

# of binds the ids of list items to the stars of a pattern.
of(bound, pattern) := {"path": path, "subject": subject} if {
	parts := split(pattern, "*")
	path := _fill(parts, bound)
	subject := _subject(path, parts, bound)
}

_fill(parts, bound) := concat("", [piece |
	some i, part in parts
	some piece in [part, array.concat(bound, [""])[i]]
])

_subject(path, _, _) := object.get(record(path), "subject", "build") if startswith(path, "figures.")

# The subject of a value is the item it belongs to: the path up to the last id.
_subject(path, parts, bound) := written(_fill(array.concat(before, [""]), bound)) if {
	not startswith(path, "figures.")
	last := max([i | some i, _ in parts])
	before := [part | some i, part in parts; i < last]
}

# about gives a finding another subject: the place of the manifest it speaks of.
about(subject, finding) := object.union(finding, {"subject": subject})

# ref is a path with its subject: a value speaks of its own place, a figure or
# limit without ids of the whole build.
ref(path) := {"path": path, "subject": written(path)} if {
	is_string(path)
	startswith(path, "build.")
}

ref(path) := {"path": path, "subject": "build"} if {
	is_string(path)
	not startswith(path, "build.")
}

ref(bound) := bound if is_object(bound)

_reserved := {"missing", "none"}

# ids returns the ids of the items of a list; none where the list is missing or none.
ids(list) := {id |
	some id, _ in record(ref(list).path)
	not id in _reserved
}

# each returns the bound ids of every item of a list, or of a list inside the
# items of another: {["starter"], …} or {["coolant", "bushing"], …}.
each(pattern) := {[id] | some id in ids(pattern)} if not contains(pattern, "*")

each(pattern) := {[outer, inner] |
	some outer in ids(trim_suffix(split(pattern, "*")[0], "."))
	some inner in ids(of([outer], pattern))
} if {
	contains(pattern, "*")
}

# rests_on lists the written paths that a record's value comes from.
rests_on(path) := object.get(record(path), "inputs", []) if startswith(path, "figures.")

rests_on(path) := [written(path)] if startswith(path, "build.")

rests_on(path) := [] if startswith(path, "limits.")

# lacks lists what is missing before a record has a value.
lacks(bound) := object.get(bound, "missing", []) if count(object.get(bound, "missing", [])) > 0

lacks(bound) := _lacks(record(bound.path)) if count(object.get(bound, "missing", [])) == 0

_lacks(found) := found.missing if is_array(found.missing)

_lacks(found) := [found.missing] if is_string(found.missing)

_lacks(found) := [] if not found.missing

# is_none says that the manifest says there is none: of a leaf or list in so
# many words, of a place with fields in every one of them.
is_none(path) if record(path).none

is_none(path) if {
	fields := record(path)
	count(fields) > 0
	every field in fields {
		field.none
	}
}

_value_keys := ["value", "low", "high", "unit", "kind", "text"]

# shown is the part of a record that a report prints.
shown(path) := object.filter(record(path), _value_keys)
