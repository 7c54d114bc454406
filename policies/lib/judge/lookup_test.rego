package lib.judge_test

import data.lib.judge

# The input document of these tests: one value of each state, a list, a list
# inside its items, and figures in each state.
build := {
	"given": {"low": 1, "high": 2, "unit": "kg", "kind": "mass", "text": "1..2 kg", "basis": "claimed"},
	"word": {"value": "diesel", "text": "diesel", "basis": "claimed"},
	"lacking": {"missing": "lacking"},
	"empty": {"none": "empty"},
	"gone": {"first": {"none": "gone.first"}, "second": {"none": "gone.second"}},
	"hollow": {},
	"part": {"first": {"none": "part.first"}, "second": {"missing": "part.second"}},
	"list": {
		"a": {"leaf": {"value": "x"}, "inner": {"p": {"leaf": {"value": "y"}}, "q": {"leaf": {"missing": "list.a.inner.q.leaf"}}}},
		"b": {"leaf": {"missing": "list.b.leaf"}, "inner": {"missing": "list.b.inner"}},
		"c": {"leaf": {"none": "list.c.leaf"}, "inner": {"none": "list.c.inner"}},
	},
}

figures := {"area": {
	"known": {"subject": "build", "low": 3, "high": 4, "unit": "1", "kind": "ratio", "basis": "claimed", "inputs": ["given", "word"]},
	"open": {"subject": "build", "missing": ["lacking", "other"]},
	"void": {"subject": "build", "none": ["empty"]},
	"outside": {"subject": "build", "outside": [{"path": "given", "low": 9, "high": 9, "from": 1, "to": 2}]},
	"each": {"a": {"subject": "list.a", "low": 1, "high": 1, "inputs": ["list.a.leaf"]}},
	"unlisted": {"missing": "list"},
}}

limits := {"area": {
	"five": {"low": 5, "high": 5, "unit": "1", "kind": "ratio", "text": "5"},
	"ten": {"low": 10, "high": 10, "unit": "1", "kind": "ratio", "text": "10"},
	"ranged": {"low": 5, "high": 10, "unit": "1", "kind": "ratio", "text": "5..10"},
}}

document := {
	"build": build, "figures": figures, "evidence": {}, "regions": [],
	"hold": "install", "today": "2026-11-25", "block_on": ["must"],
}

# holding is the document with another build.
holding(values) := object.union(object.remove(document, ["build"]), {"build": values})

test_a_record_is_never_undefined[path] if {
	some path, expected in {
		"build.given": build.given,
		"build.lacking": {"missing": "lacking"},
		"build.nowhere": {"missing": "nowhere"},
		"build.nowhere.deeper": {"missing": "nowhere.deeper"},
		"build.given.deeper": {"missing": "given.deeper"},
		"build.list.z.leaf": {"missing": "list.z.leaf"},
		"figures.area.known": figures.area.known,
		"figures.area.nowhere": {"missing": "figures.area.nowhere"},
		"limits.area.five": limits.area.five,
		"limits.area.nowhere": {"missing": "limits.area.nowhere"},
		"": {"missing": ""},
	}
	judge.record(path) == expected with input as document with data.limits as limits
}

# What is below a missing place is written where that place is.
test_below_a_missing_place[path] if {
	some path, expected in {
		"build.lacking.seal": "lacking",
		"build.lacking.seal.deeper": "lacking",
		"build.list.b.inner.p.leaf": "list.b.inner",
		"figures.area.unlisted.a": "list",
	}
	judge.record(path) == {"missing": expected} with input as document
}

test_written if {
	judge.written("build.chassis.vin") == "chassis.vin"
	judge.written("figures.mass.total") == "figures.mass.total"
}

test_of_binds_ids[pattern] if {
	some pattern, c in {
		"build.list.*.leaf": {"ids": ["a"], "ref": {"path": "build.list.a.leaf", "subject": "list.a"}},
		"build.list.*": {"ids": ["a"], "ref": {"path": "build.list.a", "subject": "list.a"}},
		"build.list.*.inner.*.leaf": {"ids": ["a", "p"], "ref": {"path": "build.list.a.inner.p.leaf", "subject": "list.a.inner.p"}},
		"figures.area.each.*": {"ids": ["a"], "ref": {"path": "figures.area.each.a", "subject": "list.a"}},
	}
	judge.of(c.ids, pattern) == c.ref with input as document
}

test_a_figure_without_its_subject_speaks_of_the_build if {
	judge.of(["z"], "figures.area.each.*").subject == "build" with input as document
}

test_ref[name] if {
	some name, c in {
		"value": {"of": "build.given", "ref": {"path": "build.given", "subject": "given"}},
		"figure": {"of": "figures.area.known", "ref": {"path": "figures.area.known", "subject": "build"}},
		"bound": {"of": {"path": "build.list.a.leaf", "subject": "list.a"}, "ref": {"path": "build.list.a.leaf", "subject": "list.a"}},
	}
	judge.ref(c.of) == c.ref
}

test_ids[list] if {
	some list, expected in {
		"build.list": {"a", "b", "c"},
		"build.lacking": set(),
		"build.empty": set(),
		"build.nowhere": set(),
	}
	judge.ids(list) == expected with input as document
}

test_each if {
	judge.each("build.list") == {["a"], ["b"], ["c"]} with input as document
	judge.each("build.list.*.inner") == {["a", "p"], ["a", "q"]} with input as document
	judge.each("build.lacking.*.inner") == set() with input as document
	judge.each("build.empty") == set() with input as document
}

test_lacks[path] if {
	some path, expected in {
		"build.given": [],
		"build.empty": [],
		"build.lacking": ["lacking"],
		"figures.area.known": [],
		"figures.area.open": ["lacking", "other"],
		"figures.area.void": [],
		"figures.area.outside": [],
		"limits.area.five": [],
	}
	judge.lacks(judge.ref(path)) == expected with input as document with data.limits as limits
}

test_a_reference_may_lack_of_itself if {
	judge.lacks({"path": "build.given", "missing": ["readings"]}) == ["readings"] with input as document
}

test_is_none[path] if {
	some path, expected in {
		"build.empty": true,
		"build.gone": true,
		"build.list.c.inner": true,
		"figures.area.void": true,
		"build.given": false,
		"build.lacking": false,
		"build.nowhere": false,
		"build.part": false,
		"build.hollow": false,
		"build.list": false,
		"figures.area.open": false,
	}
	says(path) == expected with input as document
}

says(path) if judge.is_none(path)

says(path) := false if not judge.is_none(path)

test_rests_on[path] if {
	some path, expected in {
		"build.given": ["given"],
		"figures.area.known": ["given", "word"],
		"figures.area.open": [],
		"limits.area.five": [],
	}
	judge.rests_on(path) == expected with input as document with data.limits as limits
}

test_shown_drops_what_no_report_prints if {
	judge.shown("build.given") == object.remove(build.given, ["basis"]) with input as document
	judge.shown("build.lacking") == {} with input as document
}

test_about if {
	judge.about("there", {"subject": "here", "outcome": "met"}) == {"subject": "there", "outcome": "met"}
}
