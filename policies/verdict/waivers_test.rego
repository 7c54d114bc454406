package verdict_test

import data.verdict

waiver := {
	"rule": {"value": "area/r"}, "subject": {"value": "here"}, "reason": {"value": "short test run"},
	"by": {"value": "L. Sorel"}, "until": {"value": "2026-12-31"}, "document": {"missing": "waivers.w.document"},
}

# waived judges area/r, which finds one subject as given, under a waiver.
waived(meta, outcome, w, papers) := doc if {
	catalogue := {"area/r": object.union(rule, object.union({"at": ["rules", "area", "r"]}, meta))}
	said := {"area": {"r": {"findings": {finding(outcome)}}}}
	doc := verdict.document with input as object.union(holding({"waivers": {"w": w}}), {"evidence": papers})
		with data.catalogue as catalogue
		with data.rules as said
}

for_law := object.union(waiver, {"document": {"value": "letter"}})

letter := {"kind": "authority-document", "file": "intact"}

test_waiver if {
	every c in {
		"not met": {"meta": {}, "outcome": "not met", "waiver": waiver, "state": "used"},
		"unproven": {"meta": {}, "outcome": "unproven", "waiver": waiver, "state": "used"},
		"met": {"meta": {}, "outcome": "met", "waiver": waiver, "state": "unused"},
		"another subject": {"meta": {}, "outcome": "not met", "waiver": with_field("subject", "there"), "state": "unknown-subject"},
		"on its last day": {"meta": {}, "outcome": "not met", "waiver": with_field("until", "2026-11-25"), "state": "used"},
		"the day after": {"meta": {}, "outcome": "not met", "waiver": with_field("until", "2026-11-24"), "state": "expired"},
		"without an end": {
			"meta": {}, "outcome": "not met", "state": "expired",
			"waiver": object.union(object.remove(waiver, ["until"]), {"until": {"missing": "waivers.w.until"}}),
		},
		"a rule that can't be waived": {"meta": {"waivable": false}, "outcome": "not met", "waiver": waiver, "state": "not-waivable"},
		"a rule that does not exist": {"meta": {}, "outcome": "not met", "waiver": with_field("rule", "area/other"), "state": "unknown-rule"},
		"an earlier id": {"meta": {"aliases": ["old/r"]}, "outcome": "not met", "waiver": with_field("rule", "old/r"), "state": "used"},
		"law without a document": {"meta": {"basis": "statute"}, "outcome": "not met", "waiver": waiver, "state": "needs-document"},
		"a regulation without a document": {"meta": {"basis": "regulation"}, "outcome": "not met", "waiver": waiver, "state": "needs-document"},
		"a document that is not listed": {"meta": {"basis": "statute"}, "outcome": "not met", "waiver": for_law, "state": "needs-document"},
	} {
		doc := waived(c.meta, c.outcome, c.waiver, {})
		doc.waivers.w.state == c.state
		doc.rules["area/r"].outcome == outcome_under(c)
		doc.verdict == verdict_under(c)
	}
}

with_field(name, value) := object.union(waiver, {name: {"value": value}})

outcome_under(c) := "waived" if c.state == "used"

outcome_under(c) := c.outcome if c.state != "used"

verdict_under(c) := "PASS" if outcome_under(c) in {"met", "waived"}

verdict_under(c) := "FAIL" if not outcome_under(c) in {"met", "waived"}

test_law_is_set_aside_by_the_authority if {
	every c in {
		"in order": {"letter": letter, "state": "used"},
		"of another kind": {"letter": object.union(letter, {"kind": "letter"}), "state": "needs-document"},
		"lost": {"letter": object.union(letter, {"file": "missing"}), "state": "needs-document"},
		"changed": {"letter": object.union(letter, {"file": "changed"}), "state": "needs-document"},
		"unrecorded": {"letter": object.union(letter, {"file": "unrecorded"}), "state": "needs-document"},
	} {
		every basis in ["statute", "regulation"] {
			doc := waived({"basis": basis}, "not met", for_law, {"letter": c.letter})
			doc.waivers.w.state == c.state
			doc.rules["area/r"].outcome == outcome_under({"state": c.state, "outcome": "not met"})
		}
	}
}

test_a_waived_finding_keeps_what_it_was if {
	doc := waived({}, "unproven", waiver, {})
	doc.rules["area/r"].findings == [{"subject": "here", "outcome": "waived", "waived": "unproven", "waiver": "w", "rests_on": []}]
}

test_a_waiver_covers_its_subject_only if {
	doc := verdict.document with input as holding({"waivers": {"w": waiver}})
		with data.catalogue as {"area/r": object.union(rule, {"at": ["rules", "area", "r"]})}
		with data.rules as {"area": {"r": {"findings": {finding("not met"), {"subject": "there", "outcome": "not met", "rests_on": []}}}}}
	doc.rules["area/r"].outcome == "not met"
	doc.waivers.w.state == "used"
	doc.headline == "FAIL"
}

test_a_waiver_shown_by_its_rule_of_today if {
	doc := waived({"aliases": ["old/r"]}, "not met", with_field("rule", "old/r"), {})
	doc.waivers.w.rule == "area/r"
}

# A weak basis is set aside like any other doubt.
test_a_weak_basis_can_be_waived if {
	build := {"x": {"low": 1, "high": 1, "basis": "claimed"}, "waivers": {"w": waiver}}
	rules := verdict.rules with input as holding(build)
		with data.catalogue as {"area/r": object.union(rule, {"at": ["rules", "area", "r"], "needs_basis": {"install": "measured"}})}
		with data.rules as {"area": {"r": {"findings": {{"subject": "here", "outcome": "met", "rests_on": ["x"]}}}}}
	rules["area/r"].outcome == "waived"
}

# headlined judges as many rules as there are ids, each not met and waived.
headlined(ids, hold) := doc if {
	catalogue := {concat("/", ["area", id]): object.union(rule, {"at": ["rules", "area", id], "hold": hold}) | some id in ids}
	waivers := {id: with_field("rule", concat("/", ["area", id])) | some id in ids}
	said := {id: {"findings": {finding("not met")}} | some id in ids}
	doc := verdict.document with input as holding({"waivers": waivers})
		with data.catalogue as object.union(catalogue, {"area/met": object.union(rule, {"at": ["rules", "area", "met"]})})
		with data.rules as {"area": object.union(said, {"met": {"findings": {finding("met")}}})}
}

test_headline if {
	headlined(set(), "install").headline == "PASS"
	headlined({"a"}, "install").headline == "PASS with 1 waiver"
	headlined({"a", "b"}, "install").headline == "PASS with 2 waivers"
}

test_headline_leaves_out_waivers_of_rules_due_later if {
	doc := headlined({"a"}, "handover")
	doc.headline == "PASS"
	doc.waivers.a.state == "used"
}

test_two_waivers_for_one_subject if {
	doc := verdict.document with input as holding({"waivers": {"v": waiver, "w": waiver}})
		with data.catalogue as {"area/r": object.union(rule, {"at": ["rules", "area", "r"]})}
		with data.rules as {"area": {"r": {"findings": {finding("not met")}}}}
	[doc.waivers.v.state, doc.waivers.w.state] == ["used", "unused"]
	doc.headline == "PASS with 1 waiver"
}
