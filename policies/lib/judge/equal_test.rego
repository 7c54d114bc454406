package lib.judge_test

import data.lib.judge

test_equals_and_differs[name] if {
	some name, c in {
		"one word": {"a": {"value": "x"}, "b": {"value": "x"}, "same": met, "other": not_met},
		"two words": {"a": {"value": "x"}, "b": {"value": "y"}, "same": not_met, "other": met},
		"false is false": {"a": {"value": false}, "b": {"value": false}, "same": met, "other": not_met},
		"one point": {"a": {"low": 4, "high": 4}, "b": {"low": 4, "high": 4}, "same": met, "other": not_met},
		"two points": {"a": {"low": 4, "high": 4}, "b": {"low": 5, "high": 5}, "same": not_met, "other": met},
		"apart": {"a": {"low": 6, "high": 7}, "b": {"low": 4, "high": 5}, "same": not_met, "other": met},
		"one range": {"a": {"low": 4, "high": 5}, "b": {"low": 4, "high": 5}, "same": straddles, "other": straddles},
		"overlapping": {"a": {"low": 4, "high": 6}, "b": {"low": 5, "high": 7}, "same": straddles, "other": straddles},
		"touching": {"a": {"low": 4, "high": 5}, "b": {"low": 5, "high": 6}, "same": straddles, "other": straddles},
		"touching below": {"a": {"low": 5, "high": 6}, "b": {"low": 4, "high": 5}, "same": straddles, "other": straddles},
		"a point at the top of a range": {"a": {"low": 5, "high": 5}, "b": {"low": 4, "high": 5}, "same": straddles, "other": straddles},
		"a point at the foot of a range": {"a": {"low": 5, "high": 5}, "b": {"low": 5, "high": 6}, "same": straddles, "other": straddles},
		"a point in a range": {"a": {"low": 5, "high": 5}, "b": {"low": 4, "high": 6}, "same": straddles, "other": straddles},
		"a word and a number": {"a": {"value": "4"}, "b": {"low": 4, "high": 4}, "same": unjudged, "other": unjudged},
		"one missing": {"a": {"missing": "x"}, "b": {"value": "y"}, "same": lacking, "other": lacking},
		"both missing": {"a": {"missing": "x"}, "b": {"missing": "x"}, "same": lacking, "other": lacking},
		"both none": {"a": {"none": "x"}, "b": {"none": "y"}, "same": none_of_x, "other": none_of_x},
	}
	doc := holding({"a": c.a, "b": c.b})
	said(judge.equals("build.a", "build.b")) == c.same with input as doc
	said(judge.differs("build.a", "build.b")) == c.other with input as doc
}

none_of_x := {"outcome": "unproven", "reason": "none", "missing": ["x"]}

test_one_of[name] if {
	some name, c in {
		"accepted": {"value": {"value": "a"}, "said": met},
		"another": {"value": {"value": "c"}, "said": not_met},
		"missing": {"value": {"missing": "x"}, "said": lacking},
		"none": {"value": {"none": "x"}, "said": {"outcome": "not met", "reason": "none"}},
		"a number": {"value": {"low": 1, "high": 1}, "said": not_met},
	}
	said(judge.one_of("build.x", {"a", "b"})) == c.said with input as holding({"x": c.value})
}

test_one_of_may_accept_none if {
	said(judge.one_of("build.x", {"a", "none"})) == met with input as holding({"x": {"none": "x"}})
	said(judge.one_of("build.x", {"a", "none"})) == lacking with input as holding({"x": {"missing": "x"}})
}

test_one_of_truth if {
	judge.one_of("build.x", {true}).outcome == "met" with input as holding({"x": {"value": true}})
	judge.one_of("build.x", {true}).outcome == "not met" with input as holding({"x": {"value": false}})
	judge.one_of("build.x", {false}).outcome == "met" with input as holding({"x": {"value": false}})
}

test_allowed[name] if {
	table := {"thread": {"tape", "paste"}, "cone": {"cone"}}
	some name, c in {
		"belongs": {"x": {"value": "tape"}, "k": {"value": "thread"}, "said": met},
		"does not": {"x": {"value": "tape"}, "k": {"value": "cone"}, "said": not_met},
		"value missing": {"x": {"missing": "x"}, "k": {"value": "cone"}, "said": lacking},
		"key missing": {"x": {"value": "tape"}, "k": {"missing": "k"}, "said": key_missing},
		"both missing": {
			"x": {"missing": "x"}, "k": {"missing": "k"},
			"said": {"outcome": "unproven", "reason": "missing", "missing": ["k", "x"]},
		},
		"key not in the table": {"x": {"value": "tape"}, "k": {"value": "other"}, "said": key_missing},
		"key none": {"x": {"value": "tape"}, "k": {"none": "k"}, "said": key_missing},
	}
	said(judge.allowed("build.x", "build.k", table)) == c.said with input as holding({"x": c.x, "k": c.k})
}

key_missing := {"outcome": "unproven", "reason": "missing", "missing": ["k"]}

test_worst[name] if {
	some name, c in {
		"all met": {"of": ["met", "met"], "outcome": "met"},
		"not met": {"of": ["met", "unproven", "not met", "waived"], "outcome": "not met"},
		"unproven": {"of": ["met", "waived", "unproven"], "outcome": "unproven"},
		"waived": {"of": ["met", "waived"], "outcome": "waived"},
		"met": {"of": ["not applicable", "met"], "outcome": "met"},
		"not applicable": {"of": ["not applicable"], "outcome": "not applicable"},
	}
	findings := [{"outcome": o, "rests_on": [o]} | some o in c.of]
	judge.worst(findings) == {"outcome": c.outcome, "rests_on": sort({o | some o in c.of})}
}

test_worst_of_nothing_is_nothing if not judge.worst([])

test_best[name] if {
	some name, c in {
		"one stands": {"of": ["not met", "unproven", "met"], "outcome": "met"},
		"none stands, one is open": {"of": ["not met", "unproven"], "outcome": "unproven"},
		"none stands": {"of": ["not met", "not met"], "outcome": "not met"},
	}
	judge.best([{"outcome": o} | some o in c.of]).outcome == c.outcome
}

test_best_names_the_first_of_its_kind if {
	judge.best([{"outcome": "not met"}, {"outcome": "met", "subject": "a"}, {"outcome": "met", "subject": "b"}]).subject == "a"
}

test_best_of_nothing_is_nothing if not judge.best([])

test_because_words_only_what_is_not_met if {
	judge.because("code", {"outcome": "not met", "reason": "other"}) == {"outcome": "not met", "reason": "code"}
	judge.because("code", {"outcome": "unproven", "reason": "other"}) == {"outcome": "unproven", "reason": "other"}
	judge.because("code", {"outcome": "met"}) == {"outcome": "met"}
}
