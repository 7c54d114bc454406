# METADATA
# title: a replacement engine keeps every emission device
# description: >-
#   An engine of the same family that restores the certified configuration of the vehicle
#   is a repair. It is one only while every emission device the vehicle was made with is
#   back on it and works.
# related_resources:
# - ref: http://www.off-road.com/trucks-4x4/tech/united-18320.html
#   description: copy of the EPA letter of 30 April 1996 on engine changes
# - ref: https://nepis.epa.gov/Exe/ZyPURL.cgi?Dockey=94X00LFF.txt
#   description: EPA 420-F-93-004, September 1993, on tampering
# custom:
#   level: must
#   hold: inspection
#   basis: agency-guidance
#   source: >-
#     letter of the US Environmental Protection Agency of 30 April 1996 on engine changes,
#     read in a copy; EPA 420-F-93-004 on what counts as tampering
#   needs_basis:
#     inspection: documented with evidence
#   outcomes:
#   - met
#   - not met
#   - unproven
#   - not applicable
#   remedy: refit the device, or have a new one of the same approved kind fitted
#   reviewed: 2026-11-25
#   since: 0.1.0
#   waivable: true
package regions.us.same_design

import data.lib.judge

applies := judge.all_of([
	judge.when_min("build.chassis.model_year", "limits.us.first_standard_year"),
	judge.negate(judge.when_differs("build.outgoing_engine.family", "build.engine.family")),
	judge.when_listed("build.chassis.emission_equipment"),
])

findings contains judge.one_of(
	judge.of(id, "build.chassis.emission_equipment.*.fitted"),
	{true},
) if {
	some id in judge.each("build.chassis.emission_equipment")
}
