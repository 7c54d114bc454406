# METADATA
# title: a diesel shows no smoke when it is inspected
# description: >-
#   A vehicle presented with any visible smoke from crankcase or exhaust, or with a
#   leaking exhaust, is rejected and not tested. An old pump engine has to be set for
#   that before the appointment.
# related_resources:
# - ref: https://regulations.justia.com/states/virginia/title-9/agency-5/chapter-91/part-vi/section-9vac5-91-420
#   description: 9VAC5-91-420, inspection procedure
# custom:
#   level: should
#   hold: inspection
#   basis: regulation
#   source: >-
#     9VAC5-91-420 C; that diesels from 1997 up to 8,500 lb are the ones presented is
#     second-hand, so that this is advice
#   needs_basis:
#     inspection: measured
#   outcomes:
#   - met
#   - not met
#   - unproven
#   - not applicable
#   remedy: >-
#     look at injection timing, nozzles, boost and full-load stop, and at the crankcase
#     breather, before the inspection
#   caution: >-
#     exhaust gas goes outdoors, and nobody stands in line with fan or belts while the
#     throttle is snapped
#   reviewed: 2026-11-25
#   since: 0.1.0
#   waivable: true
package regions["us-va"].visible_smoke

import data.lib.judge

_localities := {
	"Arlington", "Fairfax", "Loudoun", "Prince William", "Stafford",
	"Alexandria", "Falls Church", "Manassas", "Manassas Park",
}

applies := judge.all_of([
	judge.when_zone(_localities),
	judge.when("build.engine.fuel", {"diesel"}),
	judge.when_min("build.chassis.model_year", "limits.us_va.diesel_year"),
	judge.when_max("build.chassis.ratings.gross", "limits.us_va.diesel_gross"),
])

findings contains judge.limit_max("build.engine.smoke_plume", "limits.us_va.visible_smoke")
