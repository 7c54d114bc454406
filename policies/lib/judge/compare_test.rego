package lib.judge_test

import data.lib.judge

# said is what a finding says, without where it says it.
said(finding) := object.filter(finding, ["outcome", "reason", "missing", "outside"])

met := {"outcome": "met"}

not_met := {"outcome": "not met"}

straddles := {"outcome": "unproven", "reason": "straddles"}

lacking := {"outcome": "unproven", "reason": "missing", "missing": ["x"]}

unjudged := {"outcome": "unproven", "reason": "unjudged"}

# What no comparison can settle, whatever the comparator.
undecided := {
	"missing": {"value": {"missing": "x"}, "said": lacking},
	"several missing": {"value": {"missing": ["p", "q"]}, "said": {"outcome": "unproven", "reason": "missing", "missing": ["p", "q"]}},
	"none": {"value": {"none": "x"}, "said": {"outcome": "unproven", "reason": "none", "missing": ["x"]}},
	"outside": {
		"value": {"outside": [{"path": "x"}]},
		"said": {"outcome": "unproven", "reason": "outside", "outside": [{"path": "x"}]},
	},
	"a word": {"value": {"value": "ten"}, "said": unjudged},
	"half a range": {"value": {"low": 1}, "said": unjudged},
}

test_limit_max[name] if {
	some name, c in object.union(undecided, {
		"below": {"value": {"low": 1, "high": 4}, "said": met},
		"exactly at": {"value": {"low": 5, "high": 5}, "said": met},
		"up to": {"value": {"low": 4, "high": 5}, "said": met},
		"just above": {"value": {"low": 5.000001, "high": 6}, "said": not_met},
		"above": {"value": {"low": 6, "high": 7}, "said": not_met},
		"from": {"value": {"low": 5, "high": 6}, "said": straddles},
		"across": {"value": {"low": 4, "high": 6}, "said": straddles},
	})
	said(judge.limit_max("build.x", "limits.area.five")) == c.said with input as holding({"x": c.value}) with data.limits as limits
}

test_limit_min[name] if {
	some name, c in object.union(undecided, {
		"above": {"value": {"low": 6, "high": 7}, "said": met},
		"exactly at": {"value": {"low": 5, "high": 5}, "said": met},
		"from": {"value": {"low": 5, "high": 6}, "said": met},
		"just below": {"value": {"low": 4, "high": 4.999999}, "said": not_met},
		"below": {"value": {"low": 1, "high": 4}, "said": not_met},
		"up to": {"value": {"low": 4, "high": 5}, "said": straddles},
		"across": {"value": {"low": 4, "high": 6}, "said": straddles},
	})
	said(judge.limit_min("build.x", "limits.area.five")) == c.said with input as holding({"x": c.value}) with data.limits as limits
}

# A limit that is a range itself, such as another value of the build.
test_a_ranged_limit[name] if {
	some name, c in {
		"clear of it below": {"value": {"low": 1, "high": 5}, "max": met, "min": straddles},
		"inside": {"value": {"low": 6, "high": 8}, "max": straddles, "min": straddles},
		"clear of it above": {"value": {"low": 10, "high": 12}, "max": straddles, "min": met},
		"beyond": {"value": {"low": 11, "high": 12}, "max": not_met, "min": met},
		"short of it": {"value": {"low": 1, "high": 4}, "max": met, "min": not_met},
	}
	doc := holding({"x": c.value})
	said(judge.limit_max("build.x", "limits.area.ranged")) == c.max with input as doc with data.limits as limits
	said(judge.limit_min("build.x", "limits.area.ranged")) == c.min with input as doc with data.limits as limits
}

test_a_missing_limit_proves_nothing if {
	f := judge.limit_max("build.given", "limits.area.nowhere") with input as document with data.limits as limits
	said(f) == {"outcome": "unproven", "reason": "missing", "missing": ["limits.area.nowhere"]}
}

test_missing_is_told_before_all_else if {
	doc := holding({"x": {"none": "x"}, "y": {"missing": "y"}})
	said(judge.limit_max("build.x", "build.y")) == {"outcome": "unproven", "reason": "missing", "missing": ["y"]} with input as doc
}

test_a_doubted_value_proves_nothing if {
	doubt := {"outcome": "unproven", "reason": "stale", "changed": ["engine.date"]}
	f := judge.limit_max({"path": "build.x", "subject": "x", "doubt": doubt}, "limits.area.five") with input as holding({"x": {"low": 1, "high": 1}})
		with data.limits as limits
	object.filter(f, ["outcome", "reason", "changed"]) == doubt
}

test_a_finding_carries_value_and_limit if {
	f := judge.limit_max("figures.area.known", "limits.area.five") with input as document with data.limits as limits
	f == {
		"subject": "build", "comparator": "at most", "outcome": "met",
		"path": "figures.area.known", "limit_path": "limits.area.five",
		"value": {"low": 3, "high": 4, "unit": "1", "kind": "ratio"},
		"limit": limits.area.five, "rests_on": ["given", "word"],
	}
}

test_within[name] if {
	some name, c in {
		"between": {"value": {"low": 6, "high": 9}, "outcome": "met"},
		"exactly the span": {"value": {"low": 5, "high": 10}, "outcome": "met"},
		"below": {"value": {"low": 1, "high": 2}, "outcome": "not met"},
		"above": {"value": {"low": 11, "high": 12}, "outcome": "not met"},
		"across the lower": {"value": {"low": 4, "high": 9}, "outcome": "unproven"},
		"across the upper": {"value": {"low": 6, "high": 11}, "outcome": "unproven"},
		"across both": {"value": {"low": 1, "high": 12}, "outcome": "unproven"},
		"missing": {"value": {"missing": "x"}, "outcome": "unproven"},
	}
	judge.within("build.x", "limits.area.five", "limits.area.ten").outcome == c.outcome with input as holding({"x": c.value})
		with data.limits as limits
}

test_limit_max_for[name] if {
	table := {"tight": "limits.area.five", "loose": "limits.area.ten"}
	some name, c in {
		"tight": {"key": {"value": "tight"}, "said": not_met},
		"loose": {"key": {"value": "loose"}, "said": met},
		"missing": {"key": {"missing": "k"}, "said": {"outcome": "unproven", "reason": "missing", "missing": ["k"]}},
		"not in the table": {"key": {"value": "other"}, "said": {"outcome": "unproven", "reason": "missing", "missing": ["k"]}},
	}
	doc := holding({"x": {"low": 7, "high": 8}, "k": c.key})
	said(judge.limit_max_for("build.x", "build.k", table)) == c.said with input as doc with data.limits as limits
}

test_limit_min_for[name] if {
	table := {true: "limits.area.five", false: "limits.area.ten"}
	some name, c in {
		"reached by the smaller": {"key": {"value": true}, "said": met},
		"not by the larger": {"key": {"value": false}, "said": not_met},
		"missing": {"key": {"missing": "k"}, "said": {"outcome": "unproven", "reason": "missing", "missing": ["k"]}},
	}
	doc := holding({"x": {"low": 7, "high": 8}, "k": c.key})
	said(judge.limit_min_for("build.x", "build.k", table)) == c.said with input as doc with data.limits as limits
}

test_limit_max_from[name] if {
	bands := [{"from": "limits.area.ten", "limit": "limits.area.five"}]
	some name, c in {
		"reached": {"key": {"low": 10, "high": 10}, "said": not_met},
		"not reached": {"key": {"low": 9, "high": 9}, "said": met},
		"on either side": {"key": {"low": 9, "high": 10}, "said": {"outcome": "unproven", "reason": "straddles"}},
		"missing": {"key": {"missing": "k"}, "said": {"outcome": "unproven", "reason": "missing", "missing": ["k"]}},
	}
	doc := holding({"x": {"low": 7, "high": 8}, "k": c.key})
	said(judge.limit_max_from("build.x", "build.k", bands, "limits.area.ten")) == c.said with input as doc with data.limits as limits
}

test_limit_max_from_rests_on_both if {
	doc := holding({"x": {"low": 7, "high": 8}, "k": {"low": 9, "high": 9}})
	bands := [{"from": "limits.area.ten", "limit": "limits.area.five"}]
	finding := judge.limit_max_from("build.x", "build.k", bands, "limits.area.ten") with input as doc with data.limits as limits
	finding.rests_on == ["x", "k"]
}

test_at_most_items[name] if {
	some name, c in {
		"none": {"list": {"none": "x"}, "said": met},
		"fewer": {"list": {"a": {}}, "said": met},
		"as many": {"list": {"a": {}, "b": {}, "c": {}, "d": {}, "e": {}}, "said": met},
		"one too many": {"list": {"a": {}, "b": {}, "c": {}, "d": {}, "e": {}, "f": {}}, "said": not_met},
		"missing": {"list": {"missing": "x"}, "said": lacking},
	}
	said(judge.at_most_items("build.x", "limits.area.five")) == c.said with input as holding({"x": c.list}) with data.limits as limits
}

test_joined[name] if {
	ends := {"engine": {"value": "engine"}, "frame": {"value": "frame"}, "body": {"value": "body"}, "open": {"missing": "x.s.to"}}
	some name, c in {
		"forwards": {"list": {"s": {"from": ends.engine, "to": ends.frame}}, "said": met},
		"backwards": {"list": {"s": {"from": ends.frame, "to": ends.engine}}, "said": met},
		"another pair": {"list": {"s": {"from": ends.frame, "to": ends.body}}, "said": not_met},
		"to itself": {"list": {"s": {"from": ends.engine, "to": ends.engine}}, "said": not_met},
		"end not known": {
			"list": {"s": {"from": ends.engine, "to": ends.open}},
			"said": {"outcome": "unproven", "reason": "missing", "missing": ["x.s.to"]},
		},
		"found beside one not known": {"list": {"s": {"from": ends.engine, "to": ends.open}, "t": {"from": ends.engine, "to": ends.frame}}, "said": met},
		"none": {"list": {"none": "x"}, "said": not_met},
		"missing": {"list": {"missing": "x"}, "said": lacking},
	}
	said(judge.joined("build.x", {"engine", "frame"})) == c.said with input as holding({"x": c.list})
}

test_unlisted_names_the_lists_that_each_passes_over if {
	found := judge.unlisted("build.list.*.inner") with input as document
	{[f.subject, f.outcome, f.missing] | some f in found} == {["list.b", "unproven", ["list.b.inner"]]}
}

test_unlisted_of_a_list_that_is_not_there if {
	judge.unlisted("build.lacking.*.inner") == set() with input as document
	judge.unlisted("build.empty.*.inner") == set() with input as document
}

test_unasked if {
	f := judge.unasked("build.given") with input as document
	f.outcome == "not applicable"
	f.rests_on == []
}

test_holds if {
	doc := holding({"yes": {"value": true}, "no": {"value": false}, "x": {"missing": "x"}})
	judge.holds("build.yes", true) with input as doc
	judge.holds("build.no", false) with input as doc
	not judge.holds("build.no", true) with input as doc
	not judge.holds("build.x", true) with input as doc
	not judge.holds("build.x", false) with input as doc
	not judge.holds("build.nowhere", true) with input as doc
}
