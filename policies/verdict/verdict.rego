# METADATA
# title: the verdict
# description: >-
#   Every rule in force, judged on its subjects, with waivers applied, rolled
#   up to PASS or FAIL at the hold point.
# entrypoint: true
package verdict

import data.lib.judge

# document is the whole decision.
document := {
	"verdict": verdict,
	"headline": headline,
	"hold": input.hold,
	"today": input.today,
	"regions": [region.code | some region in input.regions],
	"blocking": blocking,
	"counts": counts,
	"rules": rules,
	"waivers": waivers,
}

default verdict := "FAIL"

# A build that nothing was asked of has not passed anything.
verdict := "PASS" if {
	count(blocking) == 0
	count(rules) > 0
}

headline := sprintf("PASS with %d %s", [_waived, _plural[_waived > 1]]) if {
	verdict == "PASS"
	_waived > 0
} else := verdict

_plural := {true: "waivers", false: "waiver"}

_waived := count([id |
	some id, waiver in waivers
	waiver.state == "used"
	rules[waiver.rule].due
])

# blocking lists the rules that stand in the way, sorted.
blocking := sort({id |
	some id, rule in rules
	rule.due
	rule.level in input.block_on
	rule.outcome in {"not met", "unproven"}
})

counts := {level: {outcome: n |
	some outcome in ["met", "not met", "unproven", "not applicable", "waived"]
	n := count(object.get(_counted, [level, outcome], set()))
} |
	some level in ["must", "should", "note"]
}

# _counted holds the rules that are due by level and outcome, in one pass.
_counted[rule.level][rule.outcome] contains id if {
	some id, rule in rules
	rule.due
}

# rules holds the judgement of every rule in force.
rules[id] := rule if {
	some id, meta in data.catalogue
	_in_force(meta)
	applies := _applies(meta)
	findings := [f | some f in _judged(id, meta, applies)]
	rule := {
		"level": meta.level,
		"hold": meta.hold,
		"due": judge.index(meta.hold) <= judge.index(input.hold),
		"outcome": _outcome(findings, applies.state),
		"because": [path | applies.state == "no"; some path in applies.because],
		"findings": findings,
	}
}

_in_force(meta) if not meta.region

_in_force(meta) if {
	some region in input.regions
	region.code == meta.region
}

# _applies is the rule's own word, "always" where it says nothing, and unknown
# where its word can't be understood. Questions are collected always: each of
# them says itself when it is raised.
_applies(meta) := judge.always if {
	meta.collects
} else := said if {
	[said] := _said(meta)
	said.state in {"yes", "no", "unknown"}
	is_array(said.because)
} else := {"state": "unknown", "because": []} if {
	_said(meta)
} else := judge.always

_said(meta) := [data.rules[meta.at[1]][meta.at[2]].applies] if {
	meta.at[0] == "rules"
} else := [data.regions[meta.at[1]][meta.at[2]].applies] if {
	meta.at[0] == "regions"
} else := [data.local[meta.at[1]][meta.at[2]][meta.at[3]].applies] if {
	meta.at[0] == "local"
}

_found(meta) := data.rules[meta.at[1]][meta.at[2]].findings if {
	meta.at[0] == "rules"
} else := data.regions[meta.at[1]][meta.at[2]].findings if {
	meta.at[0] == "regions"
} else := data.local[meta.at[1]][meta.at[2]][meta.at[3]].findings if {
	meta.at[0] == "local"
} else := set()

# _judged: what a rule says of each subject, after basis and waivers.
_judged(_, _, applies) := set() if applies.state == "no"

_judged(_, _, applies) := {{
	"subject": "build",
	"outcome": "unproven",
	"reason": "applies",
	"missing": sort(applies.because),
	"rests_on": [],
}} if {
	applies.state == "unknown"
}

_judged(id, meta, applies) := {judged |
	some finding in _examined(id, meta)
	judged := _final(id, meta, finding)
} if {
	applies.state == "yes"
}

# _final is total: what can't be judged is unproven, it never drops out.
_final(id, meta, finding) := judged if {
	finding.outcome in {"met", "not met", "unproven", "not applicable"}
	is_string(finding.subject)
	is_array(finding.rests_on)
	wanted := judge.need(object.get(meta, "needs_basis", {}), input.hold)
	judged := _waive(id, judge.settle(finding, wanted))
} else := {
	"subject": "build",
	"outcome": "unproven",
	"reason": "unjudged",
	"rests_on": [],
}

# _examined never is empty: a rule that applies and looks at nothing has
# proved nothing.
_examined(id, meta) := {_asked(id, meta)} if {
	meta.question
} else := _collected(meta) if {
	meta.collects == "questions"
} else := found if {
	found := _found(meta)
	count(found) > 0
} else := {{
	"subject": "build",
	"outcome": "unproven",
	"reason": "examined-nothing",
	"missing": sort({path | some list in meta.reads; path := judge.record(list).missing}),
	"rests_on": [],
}}

# _collected: every question of the region that the build raises and that is
# due is answered.
_collected(meta) := {finding |
	some id, question in data.catalogue
	question.question
	question.region == meta.region
	finding := judge.about(id, _due(question))
}

_due(question) := {"outcome": "not applicable", "rests_on": []} if {
	judge.index(question.hold) > judge.index(input.hold)
} else := {"outcome": "not applicable", "rests_on": []} if {
	_applies(question).state == "no"
} else := {"outcome": "unproven", "reason": "applies", "missing": sort(_applies(question).because), "rests_on": []} if {
	_applies(question).state == "unknown"
} else := _asked(question.id, question)

# _asked is a question with its answer, placed where the build raises it.
_asked(id, question) := object.union(judge.answered(id), {"path": path}) if {
	path := _applies(question).because[0]
} else := judge.answered(id)

# Nothing found is not applicable only where the rule says so itself.
_outcome([], state) := "unproven" if state != "no"

_outcome([], "no") := "not applicable"

_outcome(findings, _) := "not met" if {
	some f in findings
	f.outcome == "not met"
} else := "unproven" if {
	some f in findings
	f.outcome == "unproven"
} else := "waived" if {
	some f in findings
	f.outcome == "waived"
} else := "met" if {
	some f in findings
	f.outcome == "met"
} else := "not applicable" if {
	every f in findings {
		f.outcome == "not applicable"
	}
	count(findings) > 0
}
