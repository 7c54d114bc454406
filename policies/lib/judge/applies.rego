package lib.judge

# Applicability has three values: yes, no, and unknown while the build does
# not say. Each names the paths it rests on.

# always: the rule applies to every build.
always := {"state": "yes", "because": []}

# when: the word or truth value at a path is one of those named; "none" among
# them is the word for there being none.
when(path, accepted) := _when(ref(path), accepted)

_when(bound, accepted) := {"state": "unknown", "because": lacks(bound)} if {
	count(lacks(bound)) > 0
} else := {"state": "yes", "because": [written(bound.path)]} if {
	"none" in accepted
	is_none(bound.path)
} else := {"state": "no", "because": [written(bound.path)]} if {
	is_none(bound.path)
} else := {"state": _listed[value in accepted], "because": [written(bound.path)]} if {
	value := record(bound.path).value
} else := {"state": "unknown", "because": [written(bound.path)]}

_listed := {true: "yes", false: "no"}

# unless: the word at a path is none of those named. Not to know it is no reason
# to leave a rule out.
unless(path, words) := {"state": "no", "because": [written(ref(path).path)]} if {
	record(ref(path).path).value in words
} else := {"state": "yes", "because": [written(ref(path).path)]}

# when_listed: a list has at least one item.
when_listed(list) := {"state": "unknown", "because": [record(list).missing]} if record(list).missing

when_listed(list) := {"state": "no", "because": [written(list)]} if {
	not record(list).missing
	count(ids(list)) == 0
}

when_listed(list) := {"state": "yes", "because": [written(list)]} if count(ids(list)) > 0

# when_there: the manifest does not say that there is none.
when_there(path) := {"state": "no", "because": [written(path)]} if is_none(path)

when_there(path) := {"state": "yes", "because": [written(path)]} if not is_none(path)

# when_min: the value at a path is at least a limit.
when_min(path, limit) := _measured(limit_min(path, limit), path)

# when_max: the value at a path is at most a limit.
when_max(path, limit) := _measured(limit_max(path, limit), path)

# from_day: the text that a rule rests on is in force from this day on, a date
# such as "2027-01-01".
from_day(day) := {"state": "yes", "because": []} if day <= input.today

from_day(day) := {"state": "no", "because": []} if day > input.today

# when_since: the date at a path is this day, such as "2008-07-01", or later.
when_since(path, day) := _since(ref(path), day)

_since(bound, _) := {"state": "unknown", "because": lacks(bound)} if {
	count(lacks(bound)) > 0
}

_since(bound, day) := {"state": _listed[date >= day], "because": [written(bound.path)]} if {
	count(lacks(bound)) == 0
	date := record(bound.path).value
	is_string(date)
} else := {"state": "unknown", "because": [written(bound.path)]} if {
	count(lacks(bound)) == 0
}

# when_differs: two places of the build do not say the same.
when_differs(a, b) := _measured(differs(a, b), a)

_truth := {"met": "yes", "not met": "no", "unproven": "unknown"}

_measured(finding, path) := {
	"state": _truth[finding.outcome],
	"because": object.get(finding, "missing", [written(ref(path).path)]),
}

# all_of: no if one is no, else unknown if one is unknown.
all_of(conditions) := _joined(conditions, ["no", "unknown", "yes"])

# any_of: yes if one is yes, else unknown if one is unknown.
any_of(conditions) := _joined(conditions, ["yes", "unknown", "no"])

_joined([], priority) := {"state": priority[2], "because": []}

_joined(conditions, priority) := {"state": state, "because": because_of} if {
	count(conditions) > 0
	present := [s | some s in priority; some c in conditions; c.state == s]
	state := present[0]
	because_of := sort({path | some c in conditions; c.state == state; some path in c.because})
}

_opposite := {"yes": "no", "no": "yes", "unknown": "unknown"}

# negate turns yes into no and leaves unknown as it is.
negate(condition) := object.union(condition, {"state": _opposite[condition.state]})
