package lib.judge_test

import data.lib.judge

# Hold points stand in the order of a build.
test_index if {
	order := ["plan", "strip", "mockup", "install", "first-start", "road-test", "inspection", "handover"]
	every i, hold in order {
		judge.index(hold) == i
	}
	not judge.index("later")
}

test_need[hold] if {
	needs := {"strip": "estimated", "install": "documented", "inspection": "measured with evidence"}
	some hold, wanted in {
		"plan": "",
		"strip": "estimated",
		"mockup": "estimated",
		"install": "documented",
		"first-start": "documented",
		"road-test": "documented",
		"inspection": "measured with evidence",
		"handover": "measured with evidence",
	}
	judge.need(needs, hold) == wanted
}

test_need_nothing if judge.need({}, "handover") == ""

# The values of a finding, by basis: measured with a paper, one without, and so on.
bases := object.union(document, {
	"build": {
		"proved": {"low": 1, "high": 1, "basis": "measured", "evidence": ["ticket"]},
		"measured": {"low": 1, "high": 1, "basis": "measured"},
		"documented": {"low": 1, "high": 1, "basis": "documented"},
		"claimed": {"low": 1, "high": 1, "basis": "claimed"},
		"estimated": {"low": 1, "high": 1, "basis": "estimated"},
		"exact": {"low": 1, "high": 1, "basis": "exact"},
		"lost": {"low": 1, "high": 1, "basis": "measured", "evidence": ["gone"]},
		"guessed": {"low": 1, "high": 1, "basis": "estimated", "evidence": ["ticket"]},
		"absent": {"none": "absent"},
		"lacking": {"missing": "lacking"},
	},
	"evidence": {
		"ticket": {"file": "intact", "date": "2026-09-01", "shows": {"proved": {"low": 1, "high": 1}, "guessed": {"low": 1, "high": 1}}},
		"gone": {"file": "missing", "date": "2026-09-01", "shows": {"lost": {"low": 1, "high": 1}}},
	},
})

test_settle[name] if {
	some name, c in {
		"nothing asked": {"on": "estimated", "wanted": "", "outcome": "met"},
		"measured where measured is asked": {"on": "measured", "wanted": "measured", "outcome": "met"},
		"more than is asked": {"on": "measured", "wanted": "claimed", "outcome": "met"},
		"exact as it stands": {"on": "exact", "wanted": "measured", "outcome": "met"},
		"none, which nobody can measure": {"on": "absent", "wanted": "measured", "outcome": "met"},
		"documented where measured is asked": {"on": "documented", "wanted": "measured", "outcome": "unproven"},
		"claimed where documented is asked": {"on": "claimed", "wanted": "documented", "outcome": "unproven"},
		"estimated where claimed is asked": {"on": "estimated", "wanted": "claimed", "outcome": "unproven"},
		"estimated where estimated is asked": {"on": "estimated", "wanted": "estimated", "outcome": "met"},
		"with its paper": {"on": "proved", "wanted": "measured with evidence", "outcome": "met"},
		"without a paper": {"on": "measured", "wanted": "measured with evidence", "outcome": "unproven"},
		"its paper is lost": {"on": "lost", "wanted": "measured with evidence", "outcome": "unproven"},
		"a paper for a guess": {"on": "guessed", "wanted": "documented with evidence", "outcome": "unproven"},
		"not there at all": {"on": "lacking", "wanted": "estimated", "outcome": "unproven"},
	}
	judge.settle({"outcome": "met", "rests_on": [c.on]}, c.wanted).outcome == c.outcome with input as bases
}

test_settle_names_what_is_weak if {
	f := judge.settle({"outcome": "met", "rests_on": ["measured", "claimed", "estimated"]}, "documented") with input as bases
	f == {
		"outcome": "unproven", "reason": "weak", "needs_basis": "documented",
		"rests_on": ["measured", "claimed", "estimated"], "weak": ["claimed", "estimated"],
	}
}

test_settle_names_the_fault_of_the_paper if {
	judge.settle({"outcome": "met", "rests_on": ["lost"]}, "measured with evidence").reason == "file-missing" with input as bases
	judge.settle({"outcome": "met", "rests_on": ["measured"]}, "measured with evidence").reason == "no-evidence" with input as bases
	judge.settle({"outcome": "met", "rests_on": ["claimed"]}, "measured with evidence").reason == "weak" with input as bases
}

# Only what is met needs to be known well: a guess that is far off stays not met.
test_settle_leaves_the_rest_alone[outcome] if {
	some outcome in ["not met", "unproven", "not applicable"]
	f := {"outcome": outcome, "rests_on": ["estimated"]}
	judge.settle(f, "measured with evidence") == f with input as bases
}

# Nobody can document a load that is not there yet; a guess at it stays a guess.
test_settle_a_load[basis] if {
	some basis, outcome in {"claimed": "met", "measured": "met", "estimated": "unproven"}
	doc := holding({"masses": {"carried": {"hay": {"mass": {"low": 900, "high": 900, "basis": basis}}}}})
	f := judge.settle({"outcome": "met", "rests_on": ["masses.carried.hay.mass"]}, "documented") with input as doc
	f.outcome == outcome
}

test_settle_a_load_with_a_paper if {
	doc := holding({"masses": {"carried": {"hay": {"mass": {"low": 900, "high": 900, "basis": "measured"}}}}})
	f := judge.settle({"outcome": "met", "rests_on": ["masses.carried.hay.mass"]}, "measured with evidence") with input as doc
	f.outcome == "unproven"
}
