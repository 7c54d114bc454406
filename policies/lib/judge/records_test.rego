package lib.judge_test

import data.lib.judge

at(hold, values) := object.union(holding(values), {"hold": hold})

test_present_at[name] if {
	some name, c in {
		"given": {"hold": "install", "value": {"value": "a"}, "said": met},
		"given before": {"hold": "mockup", "value": {"value": "a"}, "said": {"outcome": "not applicable"}},
		"given later": {"hold": "handover", "value": {"value": "a"}, "said": met},
		"missing": {"hold": "install", "value": {"missing": "x"}, "said": lacking},
		"missing later": {"hold": "inspection", "value": {"missing": "x"}, "said": lacking},
		"missing before": {"hold": "mockup", "value": {"missing": "x"}, "said": {"outcome": "not applicable"}},
		"none": {"hold": "install", "value": {"none": "x"}, "said": {"outcome": "not met", "reason": "none"}},
		"none before": {"hold": "plan", "value": {"none": "x"}, "said": {"outcome": "not applicable"}},
	}
	said(judge.present_at("build.x", "install")) == c.said with input as at(c.hold, {"x": c.value})
}

test_dated_at[name] if {
	some name, c in {
		"before": {"value": {"value": "2026-11-24"}, "said": met},
		"today": {"value": {"value": "2026-11-25"}, "said": met},
		"tomorrow": {"value": {"value": "2026-11-26"}, "said": {"outcome": "not met", "reason": "future"}},
		"missing": {"value": {"missing": "x"}, "said": lacking},
	}
	said(judge.dated_at("build.x", "install")) == c.said with input as at("install", {"x": c.value})
}

test_not_after[name] if {
	known := {"value": "2026-03-02"}
	open := {"missing": "y"}
	some name, c in {
		"before": {"hold": "install", "first": {"value": "2026-03-01"}, "second": known, "outcome": "met"},
		"the same day": {"hold": "install", "first": {"value": "2026-03-02"}, "second": known, "outcome": "met"},
		"after": {"hold": "install", "first": {"value": "2026-03-03"}, "second": known, "outcome": "not met"},
		"after, known early": {"hold": "strip", "first": {"value": "2026-03-03"}, "second": known, "outcome": "not met"},
		"first missing": {"hold": "install", "first": {"missing": "x"}, "second": known, "outcome": "not applicable"},
		"second still to come": {"hold": "strip", "first": {"value": "2026-03-01"}, "second": open, "outcome": "not applicable"},
		"second missing": {"hold": "mockup", "first": {"value": "2026-03-01"}, "second": open, "outcome": "unproven"},
		"second missing later": {"hold": "install", "first": {"value": "2026-03-01"}, "second": open, "outcome": "unproven"},
	}
	judge.not_after("build.x", "build.y", "mockup").outcome == c.outcome with input as at(c.hold, {"x": c.first, "y": c.second})
}

test_closed_by[name] if {
	some name, c in {
		"done": {"done": {"value": "2026-11-01"}, "by": {"value": "install"}, "said": met},
		"done today": {"done": {"value": "2026-11-25"}, "by": {"value": "install"}, "said": met},
		"done tomorrow": {"done": {"value": "2026-11-26"}, "by": {"value": "install"}, "said": {"outcome": "not met", "reason": "future"}},
		"open": {"done": {"missing": "d"}, "by": {"value": "install"}, "said": {"outcome": "not met", "reason": "open"}},
		"open and overdue": {"done": {"missing": "d"}, "by": {"value": "plan"}, "said": {"outcome": "not met", "reason": "open"}},
		"open and due later": {"done": {"missing": "d"}, "by": {"value": "inspection"}, "said": {"outcome": "not applicable"}},
		"due when not known": {"done": {"value": "2026-11-01"}, "by": {"missing": "x"}, "said": lacking},
	}
	said(judge.closed_by("build.d", "build.b")) == c.said with input as at("install", {"d": c.done, "b": c.by})
}

holds := {
	"plan": {"date": {"value": "2026-03-01"}, "by": {"value": "L. Sorel"}},
	"install": {"date": {"value": "2026-11-25"}, "by": {"value": "L. Sorel"}},
	"strip": {"date": {"value": "2026-11-26"}, "by": {"value": "L. Sorel"}},
}

test_passed_before[name] if {
	some name, c in {
		"recorded": {"hold": "plan", "said": met},
		"recorded today": {"hold": "install", "said": met},
		"dated ahead": {"hold": "strip", "said": {"outcome": "not met", "reason": "future"}},
		"not recorded": {
			"hold": "mockup",
			"said": {"outcome": "unproven", "reason": "missing", "missing": ["build.holds.mockup.by", "build.holds.mockup.date"]},
		},
	}
	said(judge.passed_before(c.hold)) == c.said with input as holding({"build": {"holds": holds}})
}

test_passed_lists_all_up_to_the_last if {
	judge.passed == {"plan", "strip", "mockup"} with input as holding({"build": {"hold": {"value": "mockup"}}})
	judge.passed == set() with input as holding({"build": {"hold": {"none": "build.hold"}}})
	judge.passed == set() with input as holding({"build": {"hold": {"missing": "build.hold"}}})
}

test_examined[name] if {
	us := {"code": "US", "pack": true}
	some name, c in {
		"all": {"regions": [us, {"code": "US-WA", "pack": true}], "said": met},
		"one without a pack": {"regions": [us, {"code": "US-WA", "pack": false}], "said": {"outcome": "unproven", "reason": "no-region-pack"}},
		"none named": {"regions": [], "said": {"outcome": "unproven", "reason": "missing", "missing": ["registration.region"]}},
	}
	said(judge.examined) == c.said with input as object.union(document, {"regions": c.regions})
}
