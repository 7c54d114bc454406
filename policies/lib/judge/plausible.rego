package lib.judge

# possible: each value that lies beyond what the figures reading it hold for,
# or one finding on the whole build when there is none. A figure that has no
# meaning for other reasons, such as a total of nothing, accuses no value.
possible := {_impossible(path) | some path in _strange} if count(_strange) > 0

possible := {{"subject": "build", "comparator": "possible", "outcome": "met", "rests_on": []}} if count(_strange) == 0

_impossible(path) := {
	"subject": path,
	"comparator": "possible",
	"path": path,
	"value": shown(concat(".", ["build", path])),
	"outcome": "not met",
	"reason": "outside",
	"outside": [e | some e in _excesses; e.path == path],
	"rests_on": [],
}

_strange := {e.path |
	some e in _excesses
	not record(concat(".", ["build", e.path])).missing
}

_excesses contains e if {
	some group in input.figures
	some figure in group
	some e in figure.outside
}

_excesses contains e if {
	some group in input.figures
	some figure in group
	some item in figure
	some e in item.outside
}

_excesses contains e if {
	some group in input.figures
	some figure in group
	some item in figure
	some inner in item
	some e in inner.outside
}
