# METADATA
# title: the engine's emission equipment is on and works
# description: >-
#   The emission equipment that came with the engine is fitted and works. The inspection
#   looks for it, and what was left on the bench is hard to find once the donor is scrapped.
# related_resources:
# - ref: https://www.scribd.com/document/718909935/PTVH5189-STU-02895-Vehicle-Standards-Information-8-v10-WEB-FA-1
#   description: Vehicle Standards Information 8, October 2021, copy
# - ref: http://www.austlii.edu.au/au/legis/wa/consol_reg/rtsr2002368/s7.html
#   description: regulation 7 of Western Australia, older text
# custom:
#   level: should
#   hold: inspection
#   basis: agency-guidance
#   source: >-
#     Vehicle Standards Information 8 of Victoria: a registered vehicle continues to comply
#     with the standards of its date; regulation 7 of Western Australia of 2002, an older
#     text, says that each emission control system remains fitted and works as designed
#   outcomes:
#   - met
#   - not met
#   - unproven
#   - not applicable
#   remedy: refit the device, or show the engineer what stands in for it
#   reviewed: 2026-11-25
#   since: 0.1.0
#   waivable: true
package regions.au.devices_fitted

import data.lib.judge

applies := judge.when_listed("build.engine.emission_equipment")

findings contains judge.one_of(
	judge.of(id, "build.engine.emission_equipment.*.fitted"),
	{true},
) if {
	some id in judge.each("build.engine.emission_equipment")
}
