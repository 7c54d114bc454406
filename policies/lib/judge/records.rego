package lib.judge

# present_at: from a hold point on, the manifest holds a value here.
present_at(value, hold) := object.union(
	{
		"subject": ref(value).subject,
		"comparator": "given",
		"path": written(ref(value).path),
		"value": shown(ref(value).path),
		"rests_on": [written(ref(value).path)],
	},
	_present(ref(value), hold),
)

_present(_, hold) := {"outcome": "not applicable"} if index(input.hold) < index(hold)

_present(bound, hold) := {"outcome": "unproven", "reason": "missing", "missing": lacks(bound)} if {
	index(input.hold) >= index(hold)
	count(lacks(bound)) > 0
}

_present(bound, hold) := {"outcome": "not met", "reason": "none"} if {
	index(input.hold) >= index(hold)
	is_none(bound.path)
}

_present(bound, hold) := {"outcome": "met"} if {
	index(input.hold) >= index(hold)
	count(lacks(bound)) == 0
	not is_none(bound.path)
}

# dated_at: from a hold point on, the manifest holds a day here that has come.
dated_at(value, hold) := _come(present_at(value, hold))

_come(finding) := object.union(finding, {"outcome": "not met", "reason": "future"}) if {
	finding.outcome == "met"
	finding.value.value > input.today
} else := finding

# not_after: of two days the first does not come after the second, which may
# not have come before a hold point, and is known from there on.
not_after(first, second, hold) := object.union(
	{
		"subject": ref(first).subject,
		"comparator": "not after",
		"path": written(ref(first).path),
		"limit_path": written(ref(second).path),
		"value": shown(ref(first).path),
		"limit": shown(ref(second).path),
		"rests_on": [],
	},
	_in_order(record(ref(first).path).value, record(ref(second).path).value),
) if {
	count(lacks(ref(first))) == 0
	count(lacks(ref(second))) == 0
} else := object.union(unasked(first), {"outcome": "unproven", "reason": "missing", "missing": lacks(ref(second))}) if {
	index(input.hold) >= index(hold)
	count(lacks(ref(second))) > 0
} else := unasked(first)

_in_order(first, second) := {"outcome": "met"} if first <= second

_in_order(first, second) := {"outcome": "not met", "reason": "order"} if first > second

# closed_by: an item that must be done by the hold point it names is done.
closed_by(done, close_by) := object.union(
	{
		"subject": ref(done).subject,
		"comparator": "done by",
		"path": written(ref(done).path),
		"limit_path": written(ref(close_by).path),
		"value": shown(ref(done).path),
		"limit": shown(ref(close_by).path),
		"rests_on": [],
	},
	_closed(ref(done), ref(close_by)),
)

_closed(_, close_by) := {"outcome": "unproven", "reason": "missing", "missing": lacks(close_by)} if {
	count(lacks(close_by)) > 0
}

_closed(_, close_by) := {"outcome": "not applicable"} if {
	index(record(close_by.path).value) > index(input.hold)
}

_closed(done, close_by) := {"outcome": "not met", "reason": "open"} if {
	index(record(close_by.path).value) <= index(input.hold)
	count(lacks(done)) > 0
}

_closed(done, close_by) := _done(record(done.path).value) if {
	index(record(close_by.path).value) <= index(input.hold)
	count(lacks(done)) == 0
}

_done(date) := {"outcome": "met"} if date <= input.today

_done(date) := {"outcome": "not met", "reason": "future"} if date > input.today

# passed_before: every hold point up to the last one passed has its record.
passed_before(hold) := object.union(
	{
		"subject": concat(".", ["build.holds", hold]),
		"comparator": "given",
		"path": concat(".", ["build.holds", hold]),
		"value": shown(concat(".", ["build.build.holds", hold, "date"])),
		"rests_on": [],
	},
	_passed(hold),
)

_passed(hold) := {"outcome": "unproven", "reason": "missing", "missing": missing} if {
	missing := sort({path |
		some field in ["date", "by"]
		some path in lacks(ref(concat(".", ["build.build.holds", hold, field])))
	})
	count(missing) > 0
} else := {"outcome": "not met", "reason": "future"} if {
	record(concat(".", ["build.build.holds", hold, "date"])).value > input.today
} else := {"outcome": "met"}

# passed lists the hold points that the manifest says have been passed.
passed := {hold |
	last := record("build.build.hold").value
	some i, hold in data.holds
	i <= index(last)
}

# newest refers to the newest reading of something under a condition. It
# carries the doubt when something it depends on has changed since.
newest(_, _) := {"path": "build.readings", "subject": "readings", "missing": ["readings"]} if {
	record("build.readings").missing
}

newest(what, _) := {"path": "build.readings", "subject": "readings", "missing": _undetermined(what)} if {
	not record("build.readings").missing
	count(_undetermined(what)) > 0
}

newest(what, condition) := {
	"path": "build.readings",
	"subject": "readings",
	"missing": [sprintf("readings (of: %s, condition: %s)", [what, condition])],
} if {
	not record("build.readings").missing
	count(_undetermined(what)) == 0
	count(_dated(what, condition)) == 0
}

newest(what, condition) := {
	"path": concat(".", ["build.readings", id, "value"]),
	"subject": concat(".", ["readings", id]),
	"doubt": _doubt(what, condition, date),
} if {
	count(_undetermined(what)) == 0
	[date, id] := max(_dated(what, condition))
	_doubt(what, condition, date) != {}
}

newest(what, condition) := {
	"path": concat(".", ["build.readings", id, "value"]),
	"subject": concat(".", ["readings", id]),
} if {
	count(_undetermined(what)) == 0
	[date, id] := max(_dated(what, condition))
	_doubt(what, condition, date) == {}
}

# _undetermined lists what keeps readings of something from being put in
# order: which of them is the newest is not known then.
_undetermined(what) := sort({path |
	some id in ids("build.readings")
	reading := record(concat(".", ["build.readings", id]))
	reading.of.value == what
	some field in ["date", "condition"]
	path := reading[field].missing
})

_dated(what, condition) := {[reading.date.value, id] |
	some id in ids("build.readings")
	reading := record(concat(".", ["build.readings", id]))
	reading.of.value == what
	reading.condition.value == condition
}

# _doubt says why the newest reading does not settle anything, {} when it does.
_doubt(what, condition, date) := {"outcome": "unproven", "reason": "future"} if {
	date > input.today
} else := {"outcome": "unproven", "reason": "same-day"} if {
	values := {shown(concat(".", ["build.readings", id, "value"])) | some [day, id] in _dated(what, condition); day == date}
	count(values) > 1
} else := _staleness(what, date)

# _staleness says why a reading of that date no longer counts, {} when it does.
_staleness(what, date) := {"outcome": "unproven", "reason": "stale", "changed": changed} if {
	changed := sort({written(path) | some path in _changes(what); record(path).value > date})
	count(changed) > 0
} else := {"outcome": "unproven", "reason": "missing", "missing": undated} if {
	undated := sort({missing | some path in _changes(what); some missing in _lacks(record(path))})
	count(undated) > 0
} else := {}

# _changes lists the dates of everything that a reading depends on.
_changes(what) := {path |
	some pattern in data.readings[what].depends
	some path in _expand(pattern)
}

_expand(pattern) := {pattern} if not contains(pattern, "*")

_expand(pattern) := {list} if {
	contains(pattern, "*")
	list := trim_suffix(split(pattern, "*")[0], ".")
	record(list).missing
}

_expand(pattern) := {of([id], pattern).path | some id in ids(list)} if {
	contains(pattern, "*")
	list := trim_suffix(split(pattern, "*")[0], ".")
	not record(list).missing
}

# examined: every region of the chain is one that a pack examines.
examined := object.union(
	{
		"subject": "registration.region",
		"comparator": "examined",
		"path": "registration.region",
		"value": {"text": concat(" > ", [region.code | some region in input.regions])},
		"rests_on": [],
	},
	_examination,
)

_examination := {"outcome": "unproven", "reason": "missing", "missing": ["registration.region"]} if {
	count(input.regions) == 0
} else := {"outcome": "unproven", "reason": "no-region-pack"} if {
	some region in input.regions
	not region.pack
} else := {"outcome": "met"}
