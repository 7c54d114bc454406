# METADATA
# title: every emission device of the donor engine is fitted
# description: >-
#   Nobody may remove or disable a device or element of emission design of a certified
#   engine. What the donor engine was certified with comes with it: converter,
#   recirculation, crankcase and evaporative parts, sensors.
# related_resources:
# - ref: http://www.off-road.com/trucks-4x4/tech/engine-switching-fact-sheet-20126.html
#   description: copy of the EPA engine switching fact sheet, part A read on 2026-11-25
# - ref: https://nepis.epa.gov/Exe/ZyPURL.cgi?Dockey=94X00LFF.txt
#   description: EPA 420-F-93-004, September 1993, on tampering
# custom:
#   level: must
#   hold: inspection
#   basis: agency-guidance
#   source: >-
#     EPA engine switching fact sheet, part A, on section 203(a)(3) of the Clean Air Act,
#     42 U.S.C. 7522(a)(3), read in a copy; EPA 420-F-93-004
#   needs_basis:
#     inspection: documented with evidence
#   outcomes:
#   - met
#   - not met
#   - unproven
#   - not applicable
#   remedy: >-
#     find the missing device with the donor vehicle, or choose a donor that still has it
#   reviewed: 2026-11-25
#   since: 0.1.0
#   waivable: true
package regions.us.donor_devices

import data.lib.judge

applies := judge.all_of([
	judge.when_min("build.chassis.model_year", "limits.us.first_standard_year"),
	judge.when_listed("build.engine.emission_equipment"),
])

findings contains judge.one_of(
	judge.of(id, "build.engine.emission_equipment.*.fitted"),
	{true},
) if {
	some id in judge.each("build.engine.emission_equipment")
}
