# METADATA
# title: smoke is within the value on the plate
# description: >-
#   Where engine or vehicle bear a plate with an absorption coefficient, the
#   free-acceleration test is held to it, however much more the general limits would
#   allow. A pump set for power passes the general limit and fails the plate.
# related_resources:
# - ref: https://xn--snaveeb-10a.ee/search/unif/dlall/esterm/neeldumistegur
#   description: extract of the European roadworthiness directive before 2014/45/EU, read on 2026-11-25
# - ref: https://pmmonline.co.uk/news/diesel-mot-test-limit-changes/
#   description: trade press on the British test, plate value first
# custom:
#   level: should
#   hold: inspection
#   basis: second-hand
#   source: >-
#     extract of the European roadworthiness directive before 2014/45/EU; Directive
#     2014/45/EU Annex I 8.2.2.2 itself from memory; for Great Britain trade press. Which
#     plate counts after a change of engine is a question of each region
#   needs_basis:
#     inspection: documented with evidence
#   outcomes:
#   - met
#   - not met
#   - unproven
#   - not applicable
#   remedy: have the injection set by a pump shop to the plate and the test repeated
#   caution: >-
#     exhaust goes outdoors, and nobody stands in line with fan or belts while the
#     throttle is snapped
#   reviewed: 2026-11-25
#   since: 0.1.0
#   waivable: true
package rules.emissions.smoke_plate

import data.lib.judge

applies := judge.all_of([
	judge.in_region({"GB", "DE", "NL", "IE"}),
	judge.when("build.engine.fuel", {"diesel"}),
	judge.when_there("build.engine.smoke_plate"),
])

findings contains judge.limit_max("build.engine.smoke_coefficient", "build.engine.smoke_plate")
