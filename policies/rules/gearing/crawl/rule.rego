# METADATA
# title: low range crawls
# description: >-
#   First gear, low range and axle together slow the wheels to a thirtieth of the engine or
#   more. A diesel at idle pushes hard: with too little reduction it climbs into what it
#   should creep over, and the clutch pays.
# custom:
#   level: should
#   hold: plan
#   basis: common-practice
#   source: >-
#     common practice: 30 to 45 for a diesel, more for a petrol engine
#   outcomes:
#   - met
#   - not met
#   - unproven
#   - not applicable
#   remedy: >-
#     keep the low first gear, or choose a lower transfer case or axle ratio
#   reviewed: 2026-11-25
#   since: 0.1.0
#   waivable: true
package rules.gearing.crawl

import data.lib.judge

applies := judge.all_of([
	judge.when("build.engine.fuel", {"diesel"}),
	judge.when_there("build.transfer_case"),
])

findings contains judge.about(
	"transfer_case.low",
	judge.limit_min("figures.gearing.crawl_ratio", "limits.gearing.crawl"),
)
