package verdict_test

import data.verdict

collector := object.union(rule, {"at": ["regions", "us", "answered"], "region": "US", "collects": "questions"})

question := object.union(rule, {
	"id": "us/q", "at": ["regions", "us", "q"], "region": "US", "level": "note", "waivable": false,
	"question": {"ask": "may it?", "office": "office"},
})

answer := {"kind": "authority-answer", "answers": "us/q", "file": "intact", "office": "office", "date": "2026-09-01"}

# asked judges a region with one question that is raised as given.
asked(meta, applies, papers) := doc if {
	doc := verdict.document with input as object.union(document, {"regions": [{"code": "US", "pack": true}], "evidence": papers})
		with data.catalogue as {"us/answered": collector, "us/q": object.union(question, meta)}
		with data.regions as {"us": {"q": {"applies": applies}}}
}

raised := {"state": "yes", "because": ["engine.fuel"]}

test_collected if {
	every c in {
		"raised": {"meta": {}, "applies": raised, "papers": {}, "outcome": "unproven", "verdict": "FAIL"},
		"answered": {"meta": {}, "applies": raised, "papers": {"p": answer}, "outcome": "met", "verdict": "PASS"},
		"answered on a lost paper": {
			"meta": {}, "applies": raised, "papers": {"p": object.union(answer, {"file": "missing"})},
			"outcome": "unproven", "verdict": "FAIL",
		},
		"not raised": {"meta": {}, "applies": no, "papers": {}, "outcome": "not applicable", "verdict": "PASS"},
		"perhaps raised": {"meta": {}, "applies": unknown, "papers": {}, "outcome": "unproven", "verdict": "FAIL"},
		"due later": {"meta": {"hold": "inspection"}, "applies": raised, "papers": {}, "outcome": "not applicable", "verdict": "PASS"},
	} {
		doc := asked(c.meta, c.applies, c.papers)
		[doc.rules["us/answered"].outcome, doc.verdict] == [c.outcome, c.verdict]
	}
}

test_a_question_is_a_note_of_its_own if {
	doc := asked({}, raised, {})
	doc.rules["us/q"].outcome == "unproven"
	doc.blocking == ["us/answered"]
}

test_a_question_stands_where_it_is_raised if {
	doc := asked({}, raised, {})
	[f] := doc.rules["us/answered"].findings
	[f.subject, f.path, f.reason] == ["us/q", "engine.fuel", "no-answer"]
}

test_perhaps_raised_says_what_decides if {
	doc := asked({}, unknown, {})
	[f] := doc.rules["us/answered"].findings
	[f.subject, f.reason, f.missing] == ["us/q", "applies", ["engine.date", "engine.fuel"]]
}

test_each_region_collects_its_own if {
	doc := verdict.document with input as object.union(document, {"regions": [{"code": "US", "pack": true}, {"code": "US-WA", "pack": true}]})
		with data.catalogue as {
			"us/answered": collector,
			"us-wa/answered": object.union(collector, {"region": "US-WA"}),
			"us-wa/q": object.union(question, {"id": "us-wa/q", "region": "US-WA", "at": ["regions", "us-wa", "q"]}),
			"us/q": question,
		}
		with data.regions as {"us": {"q": {"applies": no}}, "us-wa": {"q": {"applies": raised}}}
	doc.rules["us/answered"].outcome == "not applicable"
	doc.rules["us-wa/answered"].outcome == "unproven"
}
