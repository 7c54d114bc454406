package verdict

import data.lib.judge

# waivers holds, for each waiver of the build, whether it was used and if not, why.
waivers[id] := {"rule": rule, "subject": subject, "state": state} if {
	some id in judge.ids("build.waivers")
	rule := _ruled(id)
	subject := judge.record(_at(id, "subject")).value
	state := _state(id)
}

_at(id, field) := concat(".", ["build.waivers", id, field])

# _ruled is the rule that a waiver names, by its id or an earlier one.
_ruled(id) := named if {
	named := judge.record(_at(id, "rule")).value
	data.catalogue[named]
} else := rule if {
	named := judge.record(_at(id, "rule")).value
	some rule, meta in data.catalogue
	named in meta.aliases
} else := judge.record(_at(id, "rule")).value

# _bound says why a waiver may not be used, "" when it may.
_bound(id) := "unknown-rule" if {
	not data.catalogue[_ruled(id)]
} else := "not-waivable" if {
	not data.catalogue[_ruled(id)].waivable
} else := "expired" if {
	not _running(id)
} else := "needs-document" if {
	data.catalogue[_ruled(id)].basis in {"statute", "regulation"}
	not _documented(id)
} else := ""

# A waiver runs up to and with the day it names.
_running(id) if judge.record(_at(id, "until")).value >= input.today

# A rule that rests on law is set aside by the authority, not by the shop.
_documented(id) if {
	paper := input.evidence[judge.record(_at(id, "document")).value]
	paper.kind == "authority-document"
	paper.file == "intact"
}

_state(id) := _bound(id) if {
	_bound(id) != ""
} else := "used" if {
	some finding in rules[_ruled(id)].findings
	finding.waiver == id
} else := "unused" if {
	some finding in rules[_ruled(id)].findings
	finding.subject == judge.record(_at(id, "subject")).value
} else := "unknown-subject"

# _waive sets a finding aside where a waiver that may be used names it.
_waive(rule, finding) := object.union(finding, {"outcome": "waived", "waiver": waiver, "waived": finding.outcome}) if {
	finding.outcome in {"not met", "unproven"}
	waiver := min(_waiving(rule, finding.subject))
} else := finding

_waiving(rule, subject) := {id |
	some id in judge.ids("build.waivers")
	_ruled(id) == rule
	judge.record(_at(id, "subject")).value == subject
	_bound(id) == ""
}
