package lib.judge_test

import data.lib.judge

sold_build(kept, torque) := holding({
	"chassis": {"engine_options": {"six": {
		"driveline_kept": kept,
		"peak_torque": {"low": torque, "high": torque, "unit": "N·m"},
	}}},
	"engine": {"peak_torque": {"low": 240, "high": 240, "unit": "N·m"}},
})

no_rating := {"outcome": "unproven", "reason": "missing", "missing": ["transmission.input_torque_rating"]}

test_sold_stands_for_a_missing_rating if {
	f := judge.rated_or_sold(no_rating) with input as sold_build({"value": true}, 285)
	f.outcome == "met"
	f.limit_path == "chassis.engine_options.six.peak_torque"
}

test_sold_needs_as_much_torque_and_the_same_driveline[name] if {
	some name, doc in {
		"weaker": sold_build({"value": true}, 230),
		"another driveline": sold_build({"value": false}, 285),
		"driveline not known": sold_build({"missing": "chassis.engine_options.six.driveline_kept"}, 285),
		"no options": holding({"chassis": {"engine_options": {"none": "chassis.engine_options"}}}),
	}
	judge.rated_or_sold(no_rating) == no_rating with input as doc
}

test_a_known_rating_counts[name] if {
	some name, rated in {
		"met": {"outcome": "met"},
		"not met": {"outcome": "not met"},
		"straddling": {"outcome": "unproven", "reason": "straddles"},
	}
	judge.rated_or_sold(rated) == rated with input as sold_build({"value": true}, 285)
}
