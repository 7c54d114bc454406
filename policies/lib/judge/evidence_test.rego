package lib.judge_test

import data.lib.judge

paper := {"file": "intact", "kind": "weigh-ticket", "date": "2026-09-01", "shows": {"x": {"low": 1, "high": 2}}}

# showing is a document whose value x names papers, which say what is given.
showing(papers) := object.union(document, {
	"build": {"x": {"low": 1, "high": 2, "basis": "measured", "evidence": sort(object.keys(papers))}},
	"evidence": papers,
})

# Each paper alone: what is wrong with it, and what that makes of the value.
faults := {
	"none": {"paper": paper, "said": {"outcome": "met"}},
	"overlapping": {"paper": object.union(paper, {"shows": {"x": {"low": 2, "high": 3}}}), "said": {"outcome": "met"}},
	"today": {"paper": object.union(paper, {"date": "2026-11-25"}), "said": {"outcome": "met"}},
	"says otherwise": {
		"paper": object.union(paper, {"shows": {"x": {"low": 3, "high": 4}}}),
		"said": {"outcome": "not met", "reason": "evidence-disagrees"},
	},
	"says a word": {
		"paper": object.union(object.remove(paper, ["shows"]), {"shows": {"x": {"value": "1"}}}),
		"said": {"outcome": "not met", "reason": "evidence-disagrees"},
	},
	"silent": {
		"paper": object.union(object.remove(paper, ["shows"]), {"shows": {"y": {"low": 1, "high": 2}}}),
		"said": {"outcome": "unproven", "reason": "evidence-silent"},
	},
	"undated": {"paper": object.union(paper, {"date": {"missing": "evidence.p.date"}}), "said": {"outcome": "unproven", "reason": "evidence-undated"}},
	"of tomorrow": {"paper": object.union(paper, {"date": "2026-11-26"}), "said": {"outcome": "unproven", "reason": "evidence-later"}},
	"lost": {"paper": object.union(paper, {"file": "missing"}), "said": {"outcome": "unproven", "reason": "file-missing"}},
	"changed": {"paper": object.union(paper, {"file": "changed"}), "said": {"outcome": "unproven", "reason": "file-changed"}},
	"unrecorded": {"paper": object.union(paper, {"file": "unrecorded"}), "said": {"outcome": "unproven", "reason": "file-unrecorded"}},
}

test_supported[name] if {
	some name, c in faults
	said(judge.supported("build.x")) == c.said with input as showing({"p": c.paper})
}

test_supporters[name] if {
	some name, c in faults
	judge.supporters("x") == [id | c.said.outcome == "met"; id := "p"] with input as showing({"p": c.paper})
}

test_a_good_paper_does_not_make_up_for_one_that_disagrees if {
	doc := showing({"good": paper, "other": faults["says otherwise"].paper})
	f := judge.supported("build.x") with input as doc
	said(f) == {"outcome": "not met", "reason": "evidence-disagrees"}
	f.evidence == ["other"]
}

test_a_good_paper_makes_up_for_one_that_is_lost if {
	f := judge.supported("build.x") with input as showing({"good": paper, "lost": faults.lost.paper})
	said(f) == {"outcome": "met"}
	f.evidence == ["good"]
}

test_no_paper_supports_nothing if {
	said(judge.supported("build.x")) == {"outcome": "unproven", "reason": "no-evidence"} with input as showing({})
	judge.supporters("x") == [] with input as showing({})
}

test_a_paper_that_is_named_and_not_listed_supports_nothing if {
	doc := holding({"x": {"low": 1, "high": 2, "evidence": ["p"]}})
	judge.supported("build.x").outcome == "unproven" with input as doc
	judge.supporters("x") == [] with input as doc
}

test_a_missing_value_is_not_supported if {
	doc := object.union(holding({"x": {"missing": "x"}}), {"evidence": {"p": paper}})
	said(judge.supported("build.x")) == lacking with input as doc
}

test_papers_of_a_reading_stand_beside_its_value if {
	doc := object.union(document, {
		"build": {"readings": {"r": {"value": {"low": 1, "high": 2, "basis": "measured"}, "evidence": {"value": ["p"]}}}},
		"evidence": {"p": object.union(paper, {"shows": {"readings.r.value": {"low": 1, "high": 2}}})},
	})
	judge.supported("build.readings.r.value").outcome == "met" with input as doc
}

test_intact[state] if {
	some state, expected in {
		"intact": {"outcome": "met"},
		"unrecorded": {"outcome": "unproven", "reason": "file-unrecorded"},
		"missing": {"outcome": "not met", "reason": "file-missing"},
		"changed": {"outcome": "not met", "reason": "file-changed"},
	}
	said(judge.intact("p")) == expected with input as showing({"p": object.union(paper, {"file": state})})
}

test_agrees[name] if {
	some name, c in {
		"the same": {"value": {"low": 1, "high": 2}, "said": met},
		"overlapping": {"value": {"low": 2, "high": 5}, "said": met},
		"apart": {"value": {"low": 3, "high": 5}, "said": {"outcome": "not met", "reason": "evidence-disagrees"}},
		"a word": {"value": {"value": "one"}, "said": {"outcome": "not met", "reason": "evidence-disagrees"}},
		"missing": {"value": {"missing": "x"}, "said": lacking},
		"none": {"value": {"none": "x"}, "said": none_of_x},
	}
	doc := object.union(document, {
		"build": {"x": c.value, "evidence": {"p": {"shows": {"s": {"path": {"value": "x"}}}}}},
		"evidence": {"p": paper},
	})
	said(judge.agrees("p", "s")) == c.said with input as doc
}

test_words_agree_when_they_are_the_same[word] if {
	some word, expected in {"diesel": "met", "petrol": "not met"}
	doc := object.union(holding({"x": {"value": "diesel", "evidence": ["p"]}}), {"evidence": {"p": {"file": "intact", "date": "2026-09-01", "shows": {"x": {"value": word}}}}})
	judge.supported("build.x").outcome == expected with input as doc
}

answer := {"file": "intact", "kind": "authority-answer", "answers": "us/q", "office": "office", "date": "2026-09-01"}

test_answered[name] if {
	some name, c in {
		"in order": {"paper": answer, "said": met},
		"of today": {"paper": object.union(answer, {"date": "2026-11-25"}), "said": met},
		"of tomorrow": {"paper": object.union(answer, {"date": "2026-11-26"}), "said": {"outcome": "unproven", "reason": "evidence-later"}},
		"undated": {"paper": object.union(answer, {"date": {"missing": "evidence.p.date"}}), "said": {"outcome": "unproven", "reason": "evidence-undated"}},
		"to another question": {"paper": object.union(answer, {"answers": "us/other"}), "said": {"outcome": "unproven", "reason": "no-answer"}},
		"from no office": {"paper": object.union(answer, {"office": {"missing": "evidence.p.office"}}), "said": {"outcome": "unproven", "reason": "answer-office"}},
		"of another kind": {"paper": object.union(answer, {"kind": "letter"}), "said": {"outcome": "unproven", "reason": "answer-kind"}},
		"lost": {"paper": object.union(answer, {"file": "missing"}), "said": {"outcome": "unproven", "reason": "file-missing"}},
		"unrecorded": {"paper": object.union(answer, {"file": "unrecorded"}), "said": {"outcome": "unproven", "reason": "file-unrecorded"}},
	}
	said(judge.answered("us/q")) == c.said with input as showing({"p": c.paper})
}

test_no_answer if {
	said(judge.answered("us/q")) == {"outcome": "unproven", "reason": "no-answer"} with input as document
}
