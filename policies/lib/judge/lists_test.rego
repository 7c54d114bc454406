package lib.judge_test

import data.lib.judge

test_lists[name] if {
	kinds := {"belt": {"value": "belt"}, "hose": {"value": "hose"}, "open": {"missing": "x.s.kind"}}
	some name, c in {
		"named": {"list": {"s": {"kind": kinds.hose}, "t": {"kind": kinds.belt}}, "said": met},
		"others only": {"list": {"s": {"kind": kinds.hose}}, "said": not_met},
		"a field not known": {
			"list": {"s": {"kind": kinds.open}, "t": {"kind": kinds.hose}},
			"said": {"outcome": "unproven", "reason": "missing", "missing": ["x.s.kind"]},
		},
		"found beside one not known": {"list": {"s": {"kind": kinds.open}, "t": {"kind": kinds.belt}}, "said": met},
		"empty": {"list": {}, "said": not_met},
		"none": {"list": {"none": "x"}, "said": not_met},
		"missing": {"list": {"missing": "x"}, "said": lacking},
	}
	said(judge.lists("build.x.*.kind", "belt")) == c.said with input as holding({"x": c.list})
}

test_lists_names_the_list if {
	f := judge.lists("build.x.*.kind", "belt") with input as holding({"x": {"none": "x"}})
	[f.subject, f.path, f.limit] == ["x", "x", {"text": "belt"}]
}
