package lib.judge

_strength := {"estimated": 1, "claimed": 2, "documented": 3, "measured": 4}

# need returns the basis that a rule asks for at a hold point: that of the
# latest hold point named up to it, "" when none is.
need(needs_basis, hold) := wanted if {
	wanted := array.reverse([needs_basis[name] |
		some i, name in data.holds
		i <= index(hold)
	])[0]
} else := ""

# index is the place of a hold point in the order of a build.
index(hold) := i if {
	some i, name in data.holds
	name == hold
}

# settle lets a met finding stand only when what it rests on is known well
# enough for the hold point.
settle(finding, "") := finding

settle(finding, wanted) := finding if {
	wanted != ""
	finding.outcome != "met"
}

settle(finding, wanted) := _settled(finding, wanted, _weak(finding, wanted)) if {
	wanted != ""
	finding.outcome == "met"
}

_settled(finding, _, weak) := finding if count(weak) == 0

_settled(finding, wanted, weak) := object.union(finding, {
	"outcome": "unproven",
	"reason": _why(weak, wanted),
	"needs_basis": wanted,
	"weak": weak,
}) if {
	count(weak) > 0
}

# _why says what is wrong with the papers where the basis alone would do.
_why(weak, wanted) := _first_fault(weak[0]) if {
	endswith(wanted, _proved)
	every path in weak {
		strong(path, trim_suffix(wanted, _proved))
	}
} else := "weak"

_weak(finding, wanted) := sort({path |
	some path in finding.rests_on
	not strong(path, wanted)
})

# strong says that the value at a written path has the basis, and evidence
# where that is asked. Plate values and trade sizes are exact as they stand.
strong(path, _) if record(concat(".", ["build", path])).basis == "exact"

# What will be carried is laid down by who drives: no paper documents a load
# that is not on the vehicle yet.
strong(path, wanted) if {
	startswith(path, "masses.carried.")
	not endswith(wanted, _proved)
	_strength[record(concat(".", ["build", path])).basis] >= _strength.claimed
}

# What is not there can't be measured any better.
strong(path, _) if is_none(concat(".", ["build", path]))

strong(path, wanted) if {
	_strength[record(concat(".", ["build", path])).basis] >= _strength[trim_suffix(wanted, _proved)]
	_shown_where_asked(path, wanted)
}

_proved := " with evidence"

_shown_where_asked(_, wanted) if not endswith(wanted, _proved)

_shown_where_asked(path, wanted) if {
	endswith(wanted, _proved)
	count(supporters(path)) > 0
}
