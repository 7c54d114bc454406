package verdict_test

import data.verdict

document := {
	"build": {"waivers": {"none": "waivers"}, "list": {"missing": "list"}},
	"figures": {}, "evidence": {}, "regions": [],
	"hold": "install", "today": "2026-11-25", "block_on": ["must"],
}

# holding is the document with another build.
holding(build) := object.union(object.remove(document, ["build"]), {"build": build})

rule := {"level": "must", "hold": "install", "basis": "physics", "waivable": true, "reads": []}

yes := {"state": "yes", "because": []}

no := {"state": "no", "because": ["electrical.alternator"]}

unknown := {"state": "unknown", "because": ["engine.fuel", "engine.date"]}

finding(outcome) := {"subject": "here", "outcome": outcome, "rests_on": []}

# decided judges one rule, area/r, that says what is given.
decided(meta, said) := doc if {
	catalogue := {"area/r": object.union(rule, object.union({"at": ["rules", "area", "r"]}, meta))}
	doc := verdict.document with input as document with data.catalogue as catalogue with data.rules as {"area": {"r": said}}
}

test_one_rule if {
	every c in {
		"met": {"said": {"findings": {finding("met")}}, "outcome": "met", "verdict": "PASS"},
		"not met": {"said": {"findings": {finding("not met")}}, "outcome": "not met", "verdict": "FAIL"},
		"unproven": {"said": {"findings": {finding("unproven")}}, "outcome": "unproven", "verdict": "FAIL"},
		"asks nothing of any subject": {"said": {"findings": {finding("not applicable")}}, "outcome": "not applicable", "verdict": "PASS"},
		"examined nothing": {"said": {"findings": set()}, "outcome": "unproven", "verdict": "FAIL"},
		"has no findings at all": {"said": {"applies": yes}, "outcome": "unproven", "verdict": "FAIL"},
		"does not apply": {"said": {"applies": no, "findings": {finding("not met")}}, "outcome": "not applicable", "verdict": "PASS"},
		"does not apply and found nothing": {"said": {"applies": no}, "outcome": "not applicable", "verdict": "PASS"},
		"may apply": {"said": {"applies": unknown, "findings": {finding("met")}}, "outcome": "unproven", "verdict": "FAIL"},
		"applies": {"said": {"applies": yes, "findings": {finding("met")}}, "outcome": "met", "verdict": "PASS"},
		"applies in words of its own": {"said": {"applies": {"state": "perhaps", "because": []}, "findings": {finding("met")}}, "outcome": "unproven", "verdict": "FAIL"},
		"applies without a state": {"said": {"applies": true, "findings": {finding("met")}}, "outcome": "unproven", "verdict": "FAIL"},
		"is the worst of its subjects": {"said": {"findings": {finding("met"), finding("unproven"), finding("not met")}}, "outcome": "not met", "verdict": "FAIL"},
		"is unproven in one subject": {"said": {"findings": {finding("met"), finding("unproven")}}, "outcome": "unproven", "verdict": "FAIL"},
		"is met in one subject": {"said": {"findings": {finding("met"), finding("not applicable")}}, "outcome": "met", "verdict": "PASS"},
	} {
		doc := decided({}, c.said)
		[doc.rules["area/r"].outcome, doc.verdict] == [c.outcome, c.verdict]
	}
}

# A finding that can't be judged never drops out, though others beside it are met.
test_malformed_finding if {
	every bad in {
		"no outcome": {"subject": "here", "rests_on": []},
		"another outcome": finding("fine"),
		"waived by the rule itself": finding("waived"),
		"no subject": {"outcome": "met", "rests_on": []},
		"a subject that is no text": {"subject": 1, "outcome": "met", "rests_on": []},
		"rests on nothing said": {"subject": "here", "outcome": "met"},
		"rests on no list": {"subject": "here", "outcome": "met", "rests_on": "all"},
		"a text": "met",
		"a number": 1,
		"nothing": null,
	} {
		doc := decided({}, {"findings": {bad, finding("met")}})
		doc.verdict == "FAIL"
		doc.rules["area/r"].outcome == "unproven"
		{"subject": "build", "outcome": "unproven", "reason": "unjudged", "rests_on": []} in doc.rules["area/r"].findings
	}
}

test_findings_that_are_no_set if {
	every found in {"a text": "met", "an object": {"outcome": "met"}, "a list": ["met"]} {
		doc := decided({}, {"findings": found})
		doc.rules["area/r"].outcome == "unproven"
		doc.verdict == "FAIL"
	}
}

test_examined_nothing_names_the_lists_it_looked_for if {
	doc := decided({"reads": ["build.list", "limits.area.five"]}, {"findings": set()})
	[f] := doc.rules["area/r"].findings
	f.reason == "examined-nothing"
	"list" in f.missing
}

test_may_apply_names_what_decides if {
	doc := decided({}, {"applies": unknown})
	[f] := doc.rules["area/r"].findings
	[f.reason, f.missing] == ["applies", ["engine.date", "engine.fuel"]]
}

test_does_not_apply_says_why if {
	doc := decided({}, {"applies": no})
	doc.rules["area/r"].because == ["electrical.alternator"]
}

# Due at its hold point and from there on, never before.
test_due if {
	every hold, due in {"plan": false, "mockup": false, "install": true, "first-start": true, "handover": true} {
		catalogue := {"area/r": object.union(rule, {"at": ["rules", "area", "r"]})}
		doc := verdict.document with input as object.union(document, {"hold": hold})
			with data.catalogue as catalogue
			with data.rules as {"area": {"r": {"findings": {finding("not met")}}}}
		[doc.rules["area/r"].due, doc.verdict == "FAIL", doc.counts.must["not met"]] == [due, due, count([1 | due])]
	}
}

test_a_hold_point_that_is_none_passes_nothing if {
	catalogue := {"area/r": object.union(rule, {"at": ["rules", "area", "r"]})}
	v := verdict.verdict with input as object.union(document, {"hold": "later"})
		with data.catalogue as catalogue
		with data.rules as {"area": {"r": {"findings": {finding("met")}}}}
	v == "FAIL"
}

test_no_rule_at_all_passes_nothing if {
	doc := verdict.document with input as document with data.catalogue as {}
	[doc.verdict, doc.headline, doc.blocking] == ["FAIL", "FAIL", []]
}

test_blocking_by_level if {
	every c in {
		"must": {"level": "must", "block_on": ["must"], "verdict": "FAIL"},
		"should": {"level": "should", "block_on": ["must"], "verdict": "PASS"},
		"note": {"level": "note", "block_on": ["must", "should"], "verdict": "PASS"},
		"should where it blocks": {"level": "should", "block_on": ["must", "should"], "verdict": "FAIL"},
		"must where should blocks too": {"level": "must", "block_on": ["must", "should"], "verdict": "FAIL"},
	} {
		every outcome in ["not met", "unproven"] {
			catalogue := {"area/r": object.union(rule, {"at": ["rules", "area", "r"], "level": c.level})}
			doc := verdict.document with input as object.union(document, {"block_on": c.block_on})
				with data.catalogue as catalogue
				with data.rules as {"area": {"r": {"findings": {finding(outcome)}}}}
			doc.verdict == c.verdict
			doc.blocking == [id | c.verdict == "FAIL"; id := "area/r"]
		}
	}
}

test_needs_basis_at_the_hold_point if {
	build := {"x": {"low": 1, "high": 1, "basis": "claimed"}, "waivers": {"none": "waivers"}}
	catalogue := {"area/r": object.union(rule, {"at": ["rules", "area", "r"], "hold": "plan", "needs_basis": {"install": "measured"}})}
	every hold, outcome in {"plan": "met", "mockup": "met", "install": "unproven", "handover": "unproven"} {
		rules := verdict.rules with input as object.union(holding(build), {"hold": hold})
			with data.catalogue as catalogue
			with data.rules as {"area": {"r": {"findings": {{"subject": "x", "outcome": "met", "rests_on": ["x"]}}}}}
		rules["area/r"].outcome == outcome
	}
}

test_counts_what_is_due if {
	catalogue := {
		"area/a": object.union(rule, {"at": ["rules", "area", "a"]}),
		"area/b": object.union(rule, {"at": ["rules", "area", "b"]}),
		"area/c": object.union(rule, {"at": ["rules", "area", "c"], "level": "should"}),
		"area/d": object.union(rule, {"at": ["rules", "area", "d"], "hold": "handover"}),
	}
	said := {
		"a": {"findings": {finding("met")}}, "b": {"findings": set()},
		"c": {"findings": {finding("not met")}}, "d": {"findings": {finding("not met")}},
	}
	doc := verdict.document with input as document with data.catalogue as catalogue with data.rules as {"area": said}
	doc.counts.must == {"met": 1, "not met": 0, "unproven": 1, "not applicable": 0, "waived": 0}
	doc.counts.should["not met"] == 1
	doc.blocking == ["area/b"]
}

# Rules of a region are in force in its chain only; local ones everywhere.
test_in_force if {
	catalogue := {
		"us/r": object.union(rule, {"at": ["regions", "us", "r"], "region": "US"}),
		"gb/r": object.union(rule, {"at": ["regions", "gb", "r"], "region": "GB"}),
		"local/shop/area/r": object.union(rule, {"at": ["local", "shop", "area", "r"]}),
	}
	rules := verdict.rules with input as object.union(document, {"regions": [{"code": "US", "pack": true}]})
		with data.catalogue as catalogue
		with data.regions as {"us": {"r": {"findings": {finding("met")}}}}
		with data.local as {"shop": {"area": {"r": {"findings": {finding("not met")}}}}}
	{id: r.outcome | some id, r in rules} == {"us/r": "met", "local/shop/area/r": "not met"}
}

test_a_local_rule_says_whether_it_applies if {
	rules := verdict.rules with input as document
		with data.catalogue as {"local/shop/area/r": object.union(rule, {"at": ["local", "shop", "area", "r"]})}
		with data.local as {"shop": {"area": {"r": {"applies": no, "findings": {finding("not met")}}}}}
	rules["local/shop/area/r"].outcome == "not applicable"
}
