# METADATA
# title: hold points were passed one after the other
# description: >-
#   No hold point was passed before the one that comes before it. A first start released
#   before the install was checked is how an engine runs away with nobody at the stop.
# custom:
#   level: should
#   hold: strip
#   basis: own-record
#   source: >-
#     the build's own record of hold points
#   outcomes:
#   - met
#   - not met
#   - unproven
#   - not applicable
#   reasons:
#     too-early: the later hold point was passed first
#   remedy: >-
#     correct the dates; or go back and pass the one that was left out before going on
#   reviewed: 2026-11-25
#   since: 0.1.0
#   waivable: true
package rules.work.holds_in_order

import data.lib.judge

applies := judge.when("build.build.hold", object.keys(_pairs))

_pairs := {
	"strip": ["build.build.holds.plan.date", "build.build.holds.strip.date"],
	"mockup": ["build.build.holds.strip.date", "build.build.holds.mockup.date"],
	"install": ["build.build.holds.mockup.date", "build.build.holds.install.date"],
	"first-start": ["build.build.holds.install.date", "build.build.holds.first-start.date"],
	"road-test": ["build.build.holds.first-start.date", "build.build.holds.road-test.date"],
	"inspection": ["build.build.holds.road-test.date", "build.build.holds.inspection.date"],
	"handover": ["build.build.holds.inspection.date", "build.build.holds.handover.date"],
}

findings contains judge.because("too-early", judge.not_after(first, second, "strip")) if {
	some hold, [first, second] in _pairs
	hold in judge.passed
}

findings contains judge.dated_at(first, "plan") if {
	some hold, [first, _] in _pairs
	hold in judge.passed
}
