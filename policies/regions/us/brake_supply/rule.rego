# METADATA
# title: vacuum of a shop job still serves what it served
# description: >-
#   A diesel has no manifold vacuum. What assists the brakes by vacuum keeps its supply
#   from a pump, or the shop has made inoperative what the brake standard of the vehicle
#   asked for.
# related_resources:
# - ref: https://ftp.gwdg.de/pub/linux/clienux/descriptive/cLIeNUX_top_directory/packages/usc4n.tgz:49/30122
#   description: copy of 49 U.S.C. 30122 from the U.S. Code Online
# custom:
#   level: should
#   hold: install
#   basis: second-hand
#   source: >-
#     49 U.S.C. 30122(b) was read in a copy; that it reaches the vacuum supply follows from
#     49 CFR 571.105 and 571.135, known at second hand
#   outcomes:
#   - met
#   - not met
#   - unproven
#   - not applicable
#   remedy: >-
#     fit a vacuum pump, or hydraulic assistance, and prove the pedal with the engine
#     running and stopped
#   caution: >-
#     do not drive a vehicle whose brake assistance is in doubt, not even across the yard
#   reviewed: 2026-11-25
#   since: 0.1.0
#   waivable: false
package regions.us.brake_supply

import data.lib.judge

applies := judge.all_of([
	judge.when("build.registration.installer", {"shop"}),
	judge.when_listed("build.vacuum.consumers"),
])

findings contains judge.about(judge.of(id, "build.vacuum.consumers.*.need").subject, judge.worst([
	judge.one_of(judge.of(id, "build.vacuum.consumers.*.connected"), {true}),
	judge.limit_min("build.vacuum.level", judge.of(id, "build.vacuum.consumers.*.need")),
])) if {
	some id in judge.each("build.vacuum.consumers")
}
