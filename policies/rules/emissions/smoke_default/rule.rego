# METADATA
# title: smoke without a plate value is within the general limit
# description: >-
#   Without a plate value the free-acceleration test is held to a coefficient: by
#   induction for older vehicles, lower for those first registered since July 2008, lower
#   again for the sixth emission stage. In Britain the older of vehicle and engine
#   decides, so a new engine in an old vehicle keeps the old limit and an old engine
#   brings its own along. Vehicles before 1980 are judged by eye, which is no licence to
#   smoke. Opacity readings of other test cycles are not converted.
# related_resources:
# - ref: https://xn--snaveeb-10a.ee/search/unif/dlall/esterm/neeldumistegur
#   description: extract of the European roadworthiness directive before 2014/45/EU, read on 2026-11-25
# - ref: https://pmmonline.co.uk/news/diesel-mot-test-limit-changes/
#   description: trade press on the British test, plate value first
# - ref: http://www.motuk.com/mot_manual/6-4.asp
#   description: copy of an older British test manual, vehicles fitted with a different engine
# custom:
#   level: should
#   hold: inspection
#   basis: second-hand
#   source: >-
#     2.5 and 3.0 from an extract of the European roadworthiness directive before
#     2014/45/EU; 1.5 and 0.7, the exemption before 1980 and the sixth stage as trigger
#     from memory and trade press (which names 1 January 2014 in its stead for Britain);
#     the older of engine and vehicle from a copy of an older British test manual, section
#     on petrol engines. A supercharged diesel is in no source
#   needs_basis:
#     inspection: documented with evidence
#   outcomes:
#   - met
#   - not met
#   - unproven
#   - not applicable
#   remedy: have injection, air filter and charge pipe put right and the test repeated
#   caution: >-
#     exhaust goes outdoors, and nobody stands in line with fan or belts while the
#     throttle is snapped
#   reviewed: 2026-11-25
#   since: 0.1.0
#   waivable: true
package rules.emissions.smoke_default

import data.lib.judge

_in_britain := judge.in_region({"GB"})

# In Britain the older of vehicle and engine decides, elsewhere the vehicle.
_since(day) := judge.all_of([
	judge.when_since("build.registration.first_registered", day),
	judge.any_of([judge.negate(_in_britain), judge.when_since("build.engine.built", day)]),
])

_later := _since("2008-07-01")

_sixth := judge.all_of([
	_later,
	judge.when_min("build.chassis.emission_stage", "limits.emissions.sixth_stage"),
	judge.any_of([judge.negate(_in_britain), judge.when_min("build.engine.emission_stage", "limits.emissions.sixth_stage")]),
])

_natural := judge.when("build.engine.induction", {"natural"})

_turbo := judge.when("build.engine.induction", {"turbocharged", "turbocharged-intercooled"})

# What chooses the limit has to be known before one is chosen. _later need not be asked
# about: a date that leaves it open leaves open whether it is since 1980, too.
_known(condition) := judge.any_of([condition, judge.negate(condition)])

applies := judge.all_of([
	judge.in_region({"GB", "DE", "NL", "IE"}),
	judge.when("build.engine.fuel", {"diesel"}),
	judge.negate(judge.when_there("build.engine.smoke_plate")),
	_since("1980-01-01"),
	_known(_sixth),
	judge.any_of([_later, _known(_natural)]),
])

_limit := "limits.emissions.smoke_sixth_stage" if {
	_sixth.state == "yes"
} else := "limits.emissions.smoke_later" if {
	_later.state == "yes"
} else := "limits.emissions.smoke_natural" if {
	_natural.state == "yes"
} else := "limits.emissions.smoke_turbo" if {
	_turbo.state == "yes"
}

findings contains judge.limit_max("build.engine.smoke_coefficient", _limit)
