package lib.judge_test

import data.lib.judge

reading(date, low) := {
	"of": {"value": "front_axle_mass"}, "condition": {"value": "kerb"},
	"date": {"value": date}, "value": {"low": low, "high": low},
}

# weighed is a document with readings, a day the engine went in, and masses.
weighed(readings) := holding({
	"readings": readings,
	"engine": {"date": {"value": "2026-05-20"}},
	"added": {"winch": {"date": {"value": "2026-06-01"}}},
})

depends := {"front_axle_mass": {"depends": ["build.engine.date", "build.added.*.date"]}}

test_newest_counts if {
	doc := weighed({"june": reading("2026-06-03", 1), "october": reading("2026-10-03", 9)})
	found := judge.newest("front_axle_mass", "kerb") with input as doc with data.readings as depends
	found == {"path": "build.readings.october.value", "subject": "readings.october"}
	judge.limit_max(found, "limits.area.five").outcome == "not met" with input as doc with data.limits as limits
}

test_other_readings_do_not_count if {
	other := object.union(reading("2026-10-04", 9), {"of": {"value": "rear_axle_mass"}})
	undated := object.union(other, {"date": {"missing": "readings.undated.date"}})
	laden := object.union(reading("2026-10-04", 9), {"condition": {"value": "laden"}})
	doc := weighed({"june": reading("2026-06-03", 1), "other": other, "undated": undated, "laden": laden})
	judge.newest("front_axle_mass", "kerb").path == "build.readings.june.value" with input as doc with data.readings as depends
}

# What keeps the newest reading from settling anything.
test_newest_in_doubt[name] if {
	some name, c in {
		"readings missing": {"readings": {"missing": "readings"}, "said": {"outcome": "unproven", "reason": "missing", "missing": ["readings"]}},
		"none at all": {"readings": {"none": "readings"}, "said": not_taken},
		"only under another condition": {
			"readings": {"a": object.union(reading("2026-06-03", 1), {"condition": {"value": "laden"}})},
			"said": not_taken,
		},
		"one undated": {
			"readings": {"a": reading("2026-06-03", 1), "b": object.union(reading("", 9), {"date": {"missing": "readings.b.date"}})},
			"said": {"outcome": "unproven", "reason": "missing", "missing": ["readings.b.date"]},
		},
		"one under no condition": {
			"readings": {"a": reading("2026-06-03", 1), "b": object.union(reading("2026-06-01", 9), {"condition": {"missing": "readings.b.condition"}})},
			"said": {"outcome": "unproven", "reason": "missing", "missing": ["readings.b.condition"]},
		},
		"dated ahead": {"readings": {"a": reading("2026-11-26", 1)}, "said": {"outcome": "unproven", "reason": "future"}},
		"dated ahead beside a good one": {
			"readings": {"a": reading("2026-06-03", 1), "b": reading("2026-11-26", 1)},
			"said": {"outcome": "unproven", "reason": "future"},
		},
		"two that differ on one day": {
			"readings": {"a": reading("2026-06-03", 1), "b": reading("2026-06-03", 2)},
			"said": {"outcome": "unproven", "reason": "same-day"},
		},
		"before the engine went in": {"readings": {"a": reading("2026-05-19", 1)}, "said": {"outcome": "unproven", "reason": "stale"}},
		"before a mass was added": {"readings": {"a": reading("2026-05-31", 1)}, "said": {"outcome": "unproven", "reason": "stale"}},
	}
	f := judge.limit_max(judge.newest("front_axle_mass", "kerb"), "limits.area.five") with input as weighed(c.readings)
		with data.readings as depends
		with data.limits as limits
	said(f) == c.said
}

not_taken := {"outcome": "unproven", "reason": "missing", "missing": ["readings (of: front_axle_mass, condition: kerb)"]}

test_a_reading_of_the_day_of_the_change_counts if {
	found := judge.newest("front_axle_mass", "kerb") with input as weighed({"a": reading("2026-06-01", 1)}) with data.readings as depends
	not found.doubt
}

test_two_alike_on_one_day_count if {
	doc := weighed({"a": reading("2026-06-03", 1), "b": reading("2026-06-03", 1)})
	found := judge.newest("front_axle_mass", "kerb") with input as doc with data.readings as depends
	not found.doubt
}

test_a_reading_of_today_counts if {
	found := judge.newest("front_axle_mass", "kerb") with input as weighed({"a": reading("2026-11-25", 1)}) with data.readings as depends
	not found.doubt
}

test_stale_names_what_changed if {
	found := judge.newest("front_axle_mass", "kerb") with input as weighed({"a": reading("2026-05-19", 1)}) with data.readings as depends
	found.doubt.changed == ["added.winch.date", "engine.date"]
}

# A change whose day is not known may have come after the reading.
test_an_undated_change_leaves_a_doubt[name] if {
	some name, c in {
		"the day": {"added": {"winch": {"date": {"missing": "added.winch.date"}}}, "missing": ["added.winch.date"]},
		"the list": {"added": {"missing": "added"}, "missing": ["added"]},
	}
	doc := holding({
		"readings": {"a": reading("2026-06-03", 1)},
		"engine": {"date": {"value": "2026-05-20"}},
		"added": c.added,
	})
	found := judge.newest("front_axle_mass", "kerb") with input as doc with data.readings as depends
	found.doubt == {"outcome": "unproven", "reason": "missing", "missing": c.missing}
}

test_nothing_added_changes_nothing if {
	doc := holding({"readings": {"a": reading("2026-06-03", 1)}, "engine": {"date": {"value": "2026-05-20"}}, "added": {"none": "added"}})
	found := judge.newest("front_axle_mass", "kerb") with input as doc with data.readings as depends
	not found.doubt
}
