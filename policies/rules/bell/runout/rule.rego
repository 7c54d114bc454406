# METADATA
# title: the bell runs true to the crankshaft
# description: >-
#   Bore and face of the bell, read with a dial gauge on the crankshaft, run true within
#   what the maker allows; where offset dowels correct the bore, 0.005 in are left at most.
#   A bell off centre or askew eats pilot bearing, front seal and gears, and the gearbox is
#   blamed.
# related_resources:
# - ref: https://www.manualshelf.com/manual/cummins/n14/specifications-english-spanish-french-german/page-89.html
#   description: bore alignment of a flywheel housing, total indicator reading by SAE number
# custom:
#   level: must
#   hold: install
#   basis: manufacturer
#   source: >-
#     limit of the maker of gearbox or housing, such as 0.008 in total for SAE 2 and 3; half
#     of 0.010 in total with offset dowels
#   outcomes:
#   - met
#   - not met
#   - unproven
#   - not applicable
#   remedy: >-
#     clean both faces and read again; turn offset dowels against the offset of the bore,
#     have the face machined
#   caution: >-
#     take the battery off before the engine is barred over by hand
#   reviewed: 2026-11-25
#   since: 0.1.0
#   waivable: true
package rules.bell.runout

import data.lib.judge

applies := judge.negate(judge.when("build.transmission.bell.as_made", {true}))

findings contains judge.about(
	"transmission.bell.bore",
	judge.limit_max("figures.bell.bore_runout_use", "limits.bell.runout"),
) if {
	judge.is_none("build.transmission.bell.dowels")
}

findings contains judge.about(
	"transmission.bell.bore",
	judge.limit_max("figures.bell.bore_offset_left", "limits.bell.offset"),
) if {
	not judge.is_none("build.transmission.bell.dowels")
}

findings contains judge.about(
	"transmission.bell.face",
	judge.limit_max("figures.bell.face_runout_use", "limits.bell.runout"),
)
