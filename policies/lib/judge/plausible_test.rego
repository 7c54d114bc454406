package lib.judge_test

import data.lib.judge

excess(path) := {"path": path, "low": 90000, "high": 90000, "from": 1, "to": 20000}

figuring(figures) := {
	"build": {"engine": {"mass": {"low": 90000, "high": 90000, "unit": "kg", "kind": "mass"}}, "list": {"a": {"x": {"low": 0, "high": 0}}}},
	"figures": figures,
}

test_possible[name] if {
	some name, c in {
		"nothing strange": {"figures": {"mass": {"total": {"subject": "build", "low": 1, "high": 2}}}, "said": {["build", "met"]}},
		"no figures": {"figures": {}, "said": {["build", "met"]}},
		"a value of the build": {"figures": {"mass": {"total": {"subject": "build", "outside": [excess("engine.mass")]}}}, "said": {["engine.mass", "not met"]}},
		"of a list item": {"figures": {"lifting": {"load": {"a": {"subject": "list.a", "outside": [excess("list.a.x")]}}}}, "said": {["list.a.x", "not met"]}},
		"of an item in an item": {"figures": {"fittings": {"bore": {"one": {"a": {"subject": "list.a", "outside": [excess("list.a.x")]}}}}}, "said": {["list.a.x", "not met"]}},
		"told once for two figures": {
			"figures": {"mass": {
				"total": {"subject": "build", "outside": [excess("engine.mass")]},
				"front": {"subject": "build", "outside": [excess("engine.mass")]},
			}},
			"said": {["engine.mass", "not met"]},
		},
		"a condition between figures": {"figures": {"air": {"effectiveness": {"subject": "build", "outside": [excess("air.rise")]}}}, "said": {["build", "met"]}},
	}
	c.said == {[f.subject, f.outcome] | some f in judge.possible} with input as figuring(c.figures)
}
