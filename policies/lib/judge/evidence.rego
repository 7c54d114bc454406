package lib.judge

# supporters lists the evidence that a value names, whose file is intact and
# which shows a value that agrees.
supporters(path) := [id |
	some id in _named(path)
	_fault(path, id) == ""
]

# _named lists the papers that a value names; those of a reading stand beside it.
_named(path) := papers if {
	steps := split(path, ".")
	[steps[0], steps[2]] == ["readings", "value"]
	papers := record(concat(".", ["build.readings", steps[1], "evidence"])).value
} else := object.get(record(concat(".", ["build", path])), "evidence", [])

# supported: at least one paper that the value names shows it, and none of
# them shows anything else.
supported(value) := object.union(
	{
		"subject": ref(value).subject,
		"comparator": "supported by evidence",
		"path": written(ref(value).path),
		"value": shown(ref(value).path),
		"rests_on": [],
	},
	_support(ref(value)),
)

_support(bound) := decision if {
	blocked := _blocked([bound])
	count(blocked) > 0
	decision := blocked[0]
} else := {"outcome": "not met", "reason": "evidence-disagrees", "evidence": disagreeing} if {
	disagreeing := _with_fault(bound, "evidence-disagrees")
	count(disagreeing) > 0
} else := {"outcome": "met", "evidence": supporters(written(bound.path))} if {
	count(supporters(written(bound.path))) > 0
} else := {"outcome": "unproven", "reason": _first_fault(written(bound.path)), "evidence": _named(written(bound.path))}

_with_fault(bound, fault) := [id |
	some id in _named(written(bound.path))
	_fault(written(bound.path), id) == fault
]

_first_fault(path) := faults[0] if {
	faults := [fault | some id in _named(path); fault := _fault(path, id)]
	count(faults) > 0
} else := "no-evidence"

# _fault says why a paper does not support a value, "" when it does.
_fault(path, id) := reason if {
	paper := input.evidence[id]
	paper.file != "intact"
	reason := concat("-", ["file", paper.file])
} else := "evidence-silent" if {
	not input.evidence[id].shows[path]
} else := "evidence-undated" if {
	not is_string(input.evidence[id].date)
} else := "evidence-later" if {
	input.evidence[id].date > input.today
} else := "evidence-disagrees" if {
	not _agrees(record(concat(".", ["build", path])), input.evidence[id].shows[path])
} else := ""

_agrees(found, says) if found.value == says.value

# A range and a paper agree where they overlap.
_agrees(found, says) if {
	found.low <= says.high
	found.high >= says.low
}

# intact: the file of a paper is there and is the one whose digest was recorded.
intact(id) := object.union(
	{
		"subject": concat(".", ["evidence", id]),
		"comparator": "intact",
		"path": concat(".", ["evidence", id, "file"]),
		"value": shown(concat(".", ["build.evidence", id, "file"])),
		"rests_on": [],
	},
	_file_state(input.evidence[id].file),
)

_file_state("intact") := {"outcome": "met"}

_file_state("unrecorded") := {"outcome": "unproven", "reason": "file-unrecorded"}

_file_state("missing") := {"outcome": "not met", "reason": "file-missing"}

_file_state("changed") := {"outcome": "not met", "reason": "file-changed"}

# agrees: what a paper shows agrees with the manifest, value by value.
agrees(id, shown_id) := object.union(
	{
		"subject": concat(".", ["evidence", id, "shows", shown_id]),
		"comparator": "agrees with",
		"path": path,
		"limit_path": concat(".", ["evidence", id, "shows", shown_id, "value"]),
		"value": shown(concat(".", ["build", path])),
		"limit": object.filter(says, _value_keys),
		"rests_on": [],
	},
	_agreement(path, says),
) if {
	path := record(concat(".", ["build.evidence", id, "shows", shown_id, "path"])).value
	says := object.get(input.evidence[id].shows, path, {})
}

_agreement(path, says) := decision if {
	blocked := _blocked([ref(concat(".", ["build", path]))])
	count(blocked) > 0
	decision := blocked[0]
} else := {"outcome": "met"} if {
	_agrees(record(concat(".", ["build", path])), says)
} else := {"outcome": "not met", "reason": "evidence-disagrees"}

# answered: the authority has answered a question, and the paper is intact.
answered(question) := {
	"subject": "build",
	"comparator": "answered",
	"outcome": "met",
	"evidence": papers,
	"rests_on": [],
} if {
	papers := _answers(question)
	count(papers) > 0
} else := object.union(
	{"subject": "build", "comparator": "answered", "outcome": "unproven", "rests_on": []},
	_unanswered([id | some id, paper in input.evidence; paper.answers == question]),
)

_answers(question) := [id |
	some id, paper in input.evidence
	paper.answers == question
	_answer_fault(paper) == ""
]

_unanswered([]) := {"reason": "no-answer"}

_unanswered(papers) := {"reason": _answer_fault(input.evidence[papers[0]]), "evidence": papers} if count(papers) > 0

# _answer_fault says why a paper does not answer what it speaks of, "" when it does.
_answer_fault(paper) := "answer-kind" if {
	paper.kind != "authority-answer"
} else := concat("-", ["file", paper.file]) if {
	paper.file != "intact"
} else := "answer-office" if {
	not is_string(paper.office)
} else := "evidence-undated" if {
	not is_string(paper.date)
} else := "evidence-later" if {
	paper.date > input.today
} else := ""
