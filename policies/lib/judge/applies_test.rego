package lib.judge_test

import data.lib.judge

yes := {"state": "yes", "because": ["a"]}

no := {"state": "no", "because": ["b"]}

unknown := {"state": "unknown", "because": ["c"]}

test_always if judge.always == {"state": "yes", "because": []}

test_when[path] if {
	some path, expected in {
		"build.word": {"state": "yes", "because": ["word"]},
		"build.given": {"state": "unknown", "because": ["given"]}, # a number is no word
		"build.empty": {"state": "no", "because": ["empty"]},
		"build.lacking": {"state": "unknown", "because": ["lacking"]},
		"build.nowhere": {"state": "unknown", "because": ["nowhere"]},
		"build.list.c.leaf": {"state": "no", "because": ["list.c.leaf"]},
	}
	judge.when(path, {"diesel"}) == expected with input as document
}

test_when_another_word if {
	judge.when("build.word", {"petrol", "lpg"}).state == "no" with input as document
	judge.when("build.word", set()).state == "no" with input as document
}

test_when_there_is_none if {
	judge.when("build.empty", {"nonroad", "none"}) == {"state": "yes", "because": ["empty"]} with input as document
	judge.when("build.lacking", {"none"}).state == "unknown" with input as document
}

test_when_false_is_a_value if {
	doc := holding({"flag": {"value": false}})
	judge.when("build.flag", {true}).state == "no" with input as doc
	judge.when("build.flag", {false}).state == "yes" with input as doc
}

test_when_listed[path] if {
	some path, expected in {
		"build.list": {"state": "yes", "because": ["list"]},
		"build.empty": {"state": "no", "because": ["empty"]},
		"build.lacking": {"state": "unknown", "because": ["lacking"]},
		"build.nowhere": {"state": "unknown", "because": ["nowhere"]},
	}
	judge.when_listed(path) == expected with input as document
}

# Not to know whether it is there is no reason to leave a rule out.
test_when_there[path] if {
	some path, expected in {
		"build.given": "yes",
		"build.lacking": "yes",
		"build.nowhere": "yes",
		"build.part": "yes",
		"build.empty": "no",
		"build.gone": "no",
	}
	judge.when_there(path).state == expected with input as document
}

test_when_min[name] if {
	some name, c in {
		"above": {"value": {"low": 6, "high": 7}, "state": "yes"},
		"at the limit": {"value": {"low": 5, "high": 5}, "state": "yes"},
		"below": {"value": {"low": 1, "high": 4}, "state": "no"},
		"straddling": {"value": {"low": 4, "high": 6}, "state": "unknown"},
		"missing": {"value": {"missing": "x"}, "state": "unknown"},
		"none": {"value": {"none": "x"}, "state": "unknown"},
		"a word": {"value": {"value": "six"}, "state": "unknown"},
	}
	judge.when_min("build.x", "limits.area.five").state == c.state with input as holding({"x": c.value}) with data.limits as limits
}

test_when_max[name] if {
	some name, c in {
		"above": {"value": {"low": 6, "high": 7}, "state": "no"},
		"at the limit": {"value": {"low": 5, "high": 5}, "state": "yes"},
		"straddling": {"value": {"low": 4, "high": 6}, "state": "unknown"},
		"missing": {"value": {"missing": "x"}, "state": "unknown"},
	}
	judge.when_max("build.x", "limits.area.five").state == c.state with input as holding({"x": c.value}) with data.limits as limits
}

# The document of these tests is of 25 November 2026.
test_from_day[day] if {
	some day, state in {"2026-11-24": "yes", "2026-11-25": "yes", "2026-11-26": "no", "2027-01-01": "no"}
	judge.from_day(day).state == state with input as document
}

test_when_since[day] if {
	some day, state in {"2008-06-30": "yes", "2008-07-01": "yes", "2008-07-02": "no"}
	judge.when_since("build.day", day) == {"state": state, "because": ["day"]} with input as holding({"day": {"value": "2008-07-01"}})
}

test_when_since_needs_a_date[name] if {
	some name, value in {"missing": {"missing": "day"}, "none": {"none": "day"}, "a number": {"low": 3, "high": 3}}
	judge.when_since("build.day", "2008-07-01") == {"state": "unknown", "because": ["day"]} with input as holding({"day": value})
}

test_when_min_says_what_it_rests_on if {
	judge.when_min("build.lacking", "limits.area.five").because == ["lacking"] with input as document with data.limits as limits
	judge.when_min("build.given", "limits.area.five").because == ["given"] with input as document with data.limits as limits
}

test_unless[path] if {
	some path, state in {"build.word": "no", "build.given": "yes", "build.lacking": "yes", "build.empty": "yes"}
	judge.unless(path, {"diesel"}) == {"state": state, "because": [trim_prefix(path, "build.")]} with input as document
}

test_when_differs[name] if {
	some name, c in {
		"two words": {"other": {"value": "petrol"}, "state": "yes"},
		"one word": {"other": {"value": "diesel"}, "state": "no"},
		"missing": {"other": {"missing": "other"}, "state": "unknown"},
		"none": {"other": {"none": "other"}, "state": "unknown"},
	}
	judge.when_differs("build.word", "build.other").state == c.state with input as holding({"other": c.other, "word": build.word})
}

test_all_of[name] if {
	some name, c in {
		"none asked": {"of": [], "state": "yes", "because": []},
		"all yes": {"of": [yes, yes], "state": "yes", "because": ["a"]},
		"one no": {"of": [yes, no], "state": "no", "because": ["b"]},
		"one unknown": {"of": [yes, unknown], "state": "unknown", "because": ["c"]},
		"no settles what is unknown": {"of": [unknown, no], "state": "no", "because": ["b"]},
	}
	judge.all_of(c.of) == {"state": c.state, "because": c.because}
}

test_any_of[name] if {
	some name, c in {
		"none asked": {"of": [], "state": "no", "because": []},
		"all no": {"of": [no, no], "state": "no", "because": ["b"]},
		"one yes": {"of": [no, yes], "state": "yes", "because": ["a"]},
		"one unknown": {"of": [no, unknown], "state": "unknown", "because": ["c"]},
		"yes settles what is unknown": {"of": [unknown, yes], "state": "yes", "because": ["a"]},
	}
	judge.any_of(c.of) == {"state": c.state, "because": c.because}
}

test_negate if {
	judge.negate(yes) == {"state": "no", "because": ["a"]}
	judge.negate(no) == {"state": "yes", "because": ["b"]}
	judge.negate(unknown) == unknown
}
