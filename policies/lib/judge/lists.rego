package lib.judge

# lists: some item of a list says a word at a field, given as a pattern such as
# "build.controls.gauges.*.shows".
lists(pattern, word) := object.union(
	{
		"subject": written(_list_of(pattern)),
		"comparator": "lists",
		"path": written(_list_of(pattern)),
		"limit": {"text": word},
		"rests_on": [],
	},
	_listing(_list_of(pattern), pattern, word),
)

_list_of(pattern) := trim_suffix(split(pattern, "*")[0], ".")

_listing(list, _, _) := {"outcome": "unproven", "reason": "missing", "missing": lacks(ref(list))} if {
	count(lacks(ref(list))) > 0
}

_listing(list, pattern, word) := {"outcome": "met"} if {
	some id in each(list)
	holds(of(id, pattern), word)
} else := {"outcome": "unproven", "reason": "missing", "missing": unsaid} if {
	unsaid := sort({path | some id in each(list); some path in lacks(of(id, pattern))})
	count(unsaid) > 0
} else := {"outcome": "not met"} if {
	count(lacks(ref(list))) == 0
}
