package lib.judge

# limit_max: the value is at most the limit over its whole range.
limit_max(value, limit) := _compare(ref(value), ref(limit), "at most")

# limit_min: the value is at least the limit over its whole range.
limit_min(value, limit) := _compare(ref(value), ref(limit), "at least")

# within: the value lies between two limits over its whole range.
within(value, low, high) := worst([limit_min(value, low), limit_max(value, high)])

# limit_max_for: the limit is the one that a table names for the word or truth
# value at a key. What the table does not know, or nothing there, leaves the
# finding unproven.
limit_max_for(value, key, table) := _limit_for(value, key, table, "at most")

# limit_min_for: the same for a value that must be at least its limit.
limit_min_for(value, key, table) := _limit_for(value, key, table, "at least")

_limit_for(value, key, table, comparator) := finding if {
	limit := table[record(ref(key).path).value]
	finding := _by_key(_compare(ref(value), ref(limit), comparator), key)
} else := object.union(_bare(value, comparator), {
	"outcome": "unproven",
	"reason": "missing",
	"missing": sort({path |
		some path in array.concat(lacks(ref(key)), [written(ref(key).path)])
	}),
})

# limit_max_from: the limit is that of the first band whose start the value at
# a key has reached, the last one where it has reached none. Bands run from the
# highest start downwards.
limit_max_from(value, key, bands, otherwise) := object.union(_bare(value, "at most"), undecided[0]) if {
	undecided := [object.filter(said, ["outcome", "reason", "missing"]) |
		some band in bands
		said := limit_min(key, band.from)
		said.outcome == "unproven"
	]
	count(undecided) > 0
} else := _by_key(limit_max(value, limit), key) if {
	reached := [band.limit | some band in bands; limit_min(key, band.from).outcome == "met"]
	limit := array.concat(reached, [otherwise])[0]
}

# _by_key: what was found rests on the key that chose the limit, too.
_by_key(finding, key) := object.union(finding, {"rests_on": array.concat(finding.rests_on, rests_on(ref(key).path))})

_bare(value, comparator) := {
	"subject": ref(value).subject,
	"comparator": comparator,
	"path": written(ref(value).path),
	"value": shown(ref(value).path),
	"rests_on": rests_on(ref(value).path),
}

# at_most_items: a list holds no more items than the limit.
at_most_items(list, limit) := object.union(
	{
		"subject": written(ref(list).path),
		"comparator": "at most",
		"path": written(ref(list).path),
		"limit_path": limit,
		"value": {"text": sprintf("%d", [count(ids(list))])},
		"limit": shown(limit),
		"rests_on": [],
	},
	_few(ref(list), record(limit)),
)

_few(list, _) := {"outcome": "unproven", "reason": "missing", "missing": lacks(list)} if count(lacks(list)) > 0

_few(list, limit) := {"outcome": "met"} if {
	count(lacks(list)) == 0
	count(ids(list)) <= limit.low
}

_few(list, limit) := {"outcome": "not met"} if {
	count(lacks(list)) == 0
	count(ids(list)) > limit.low
}

# joined: some item of a list joins the two ends named, in either direction.
joined(list, pair) := object.union(
	{
		"subject": written(list),
		"comparator": "joined",
		"path": written(list),
		"limit": {"text": concat(" to ", sort(pair))},
		"rests_on": [],
	},
	_join(list, pair),
)

_join(list, _) := {"outcome": "unproven", "reason": "missing", "missing": lacks(ref(list))} if count(lacks(ref(list))) > 0

_join(list, pair) := {"outcome": "met"} if {
	some id in ids(list)
	item := record(concat(".", [list, id]))
	{item.from.value, item.to.value} == pair
} else := {"outcome": "unproven", "reason": "missing", "missing": open_ends} if {
	open_ends := sort({path |
		some id in ids(list)
		some field in ["from", "to"]
		some path in lacks(ref(concat(".", [list, id, field])))
	})
	count(open_ends) > 0
} else := {"outcome": "not met"} if {
	count(lacks(ref(list))) == 0
}

# holds says whether a truth value at a path is the one named; a missing one is not.
holds(value, wanted) if record(ref(value).path).value == wanted

# unlisted gives the findings for lists inside the items of another that the
# build does not speak of: each passes over them, and they must not pass with it.
unlisted(pattern) := {object.union(_bare(list, "given"), {"outcome": "unproven", "reason": "missing", "missing": lacks(list)}) |
	some id in each(trim_suffix(split(pattern, "*")[0], "."))
	list := of(id, pattern)
	count(lacks(list)) > 0
}

# unasked is the finding for a subject that a rule does not ask anything of.
unasked(value) := object.union(_bare(value, "given"), {"outcome": "not applicable", "rests_on": []})

_compare(value, limit, comparator) := object.union(
	{
		"subject": value.subject,
		"comparator": comparator,
		"path": written(value.path),
		"limit_path": written(limit.path),
		"value": shown(value.path),
		"limit": shown(limit.path),
		"rests_on": rests_on(value.path),
	},
	_decide(value, limit, comparator),
)

_decide(value, limit, comparator) := decision if {
	blocked := _blocked([value, limit])
	count(blocked) > 0
	decision := blocked[0]
} else := {"outcome": "unproven", "reason": "units-differ"} if {
	record(value.path).unit != record(limit.path).unit
} else := decision if {
	decision := _order(record(value.path), record(limit.path), comparator)
} else := _unlike

# _blocked lists, most telling first, why two records can't be compared at all.
_blocked(refs) := array.concat(
	[decision |
		missing := sort({path | some bound in refs; some path in lacks(bound)})
		count(missing) > 0
		decision := {"outcome": "unproven", "reason": "missing", "missing": missing}
	],
	array.concat(
		[decision |
			some bound in refs
			is_none(bound.path)
			decision := {"outcome": "unproven", "reason": "none", "missing": _nones(bound.path)}
		],
		array.concat(
			[decision |
				some bound in refs
				outside := record(bound.path).outside
				decision := {"outcome": "unproven", "reason": "outside", "outside": outside}
			],
			[decision |
				some bound in refs
				decision := bound.doubt
			],
		),
	),
)

_nones(path) := record(path).none if is_array(record(path).none)

_nones(path) := [record(path).none] if is_string(record(path).none)

_order(value, limit, "at most") := {"outcome": "met"} if value.high <= limit.low

_order(value, limit, "at most") := {"outcome": "not met"} if value.low > limit.high

_order(value, limit, "at most") := {"outcome": "unproven", "reason": "straddles"} if {
	value.high > limit.low
	value.low <= limit.high
}

_order(value, limit, "at least") := {"outcome": "met"} if value.low >= limit.high

_order(value, limit, "at least") := {"outcome": "not met"} if value.high < limit.low

_order(value, limit, "at least") := {"outcome": "unproven", "reason": "straddles"} if {
	value.low < limit.high
	value.high >= limit.low
}

# equals: two places of the build say the same.
equals(a, b) := _relate(ref(a), ref(b), "the same as")

# differs: two places of the build do not say the same.
differs(a, b) := _relate(ref(a), ref(b), "other than")

_relate(a, b, comparator) := object.union(
	{
		"subject": a.subject,
		"comparator": comparator,
		"path": written(a.path),
		"limit_path": written(b.path),
		"value": shown(a.path),
		"limit": shown(b.path),
		"rests_on": array.concat(rests_on(a.path), rests_on(b.path)),
	},
	_related(a, b, comparator),
)

_related(a, b, comparator) := decision if {
	blocked := _blocked([a, b])
	count(blocked) > 0
	decision := blocked[0]
} else := decision if {
	decision := _same(record(a.path), record(b.path), comparator)
} else := _unlike

# _unlike: a word and a number can't be compared, and that proves nothing.
_unlike := {"outcome": "unproven", "reason": "unjudged"}

# Two measured ranges are the same only when both are one and the same point:
# overlap alone proves nothing, standing apart proves a difference.
_same(a, b, comparator) := _if_equal(comparator, _equality(a, b))

_equality(a, b) := "equal" if a.value == b.value

_equality(a, b) := "different" if a.value != b.value

_equality(a, b) := "equal" if {
	a.low == b.low
	a.high == b.high
	a.low == a.high
}

_equality(a, b) := "different" if a.high < b.low

_equality(a, b) := "different" if a.low > b.high

_equality(a, b) := "open" if {
	a.high >= b.low
	a.low <= b.high
	[a.low, b.low] != [a.high, b.high]
}

_if_equal(_, "open") := {"outcome": "unproven", "reason": "straddles"}

_if_equal("the same as", "equal") := {"outcome": "met"}

_if_equal("the same as", "different") := {"outcome": "not met"}

_if_equal("other than", "different") := {"outcome": "met"}

_if_equal("other than", "equal") := {"outcome": "not met"}

# one_of: the word or truth value at a path is one of those accepted.
one_of(value, accepted) := _choose(ref(value), accepted, rests_on(ref(value).path))

# allowed: the word at a path is one of those a table accepts for the word at
# another. A word the table does not know is not judged: it stays unproven.
allowed(value, key, table) := finding if {
	found := record(ref(key).path)
	accepted := table[found.value]
	finding := _choose(ref(value), accepted, array.concat(rests_on(ref(value).path), rests_on(ref(key).path)))
} else := object.union(
	_choose(ref(value), set(), rests_on(ref(value).path)),
	{"outcome": "unproven", "reason": "missing", "missing": _unknown([ref(value), ref(key)])},
)

# _unknown lists what is missing; where nothing is, the key is a word the table does not know.
_unknown(refs) := missing if {
	missing := sort({path | some bound in refs; some path in lacks(bound)})
	count(missing) > 0
} else := [written(refs[1].path)]

_choose(value, accepted, sources) := object.union(
	{
		"subject": value.subject,
		"comparator": "one of",
		"path": written(value.path),
		"value": shown(value.path),
		"limit": {"text": concat(", ", sort({sprintf("%v", [word]) | some word in accepted}))},
		"rests_on": sources,
	},
	_chosen(value, accepted),
)

_chosen(value, accepted) := decision if {
	"none" in accepted
	is_none(value.path)
	decision := {"outcome": "met"}
} else := {"outcome": "not met", "reason": "none"} if {
	is_none(value.path)
} else := decision if {
	blocked := _blocked([value])
	count(blocked) > 0
	decision := blocked[0]
} else := {"outcome": "met"} if {
	record(value.path).value in accepted
} else := {"outcome": "not met"}

# worst joins findings on one subject into the one that counts: a chain of
# conditions is as good as its weakest.
worst(findings) := object.union(pick, {"rests_on": sort({path | some f in findings; some path in f.rests_on})}) if {
	some outcome in ["not met", "unproven", "waived", "met", "not applicable"]
	ranked := [f | some f in findings; f.outcome == outcome]
	count(ranked) > 0
	not _worse(findings, outcome)
	pick := ranked[0]
}

_rank := {"not met": 4, "unproven": 3, "waived": 2, "met": 1, "not applicable": 0}

_worse(findings, outcome) if {
	some f in findings
	_rank[f.outcome] > _rank[outcome]
}

# best joins findings of which one is enough: the first that stands speaks for
# them all, else one that leaves it open.
best(findings) := [f | some outcome in ["met", "unproven", "not met"]; some f in findings; f.outcome == outcome][0]

# because names why a finding is not met, by a code that the rule's metadata words.
because(code, finding) := object.union(finding, {"reason": code}) if finding.outcome == "not met"

because(_, finding) := finding if finding.outcome != "not met"
