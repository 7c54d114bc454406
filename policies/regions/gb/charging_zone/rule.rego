# METADATA
# title: a diesel in place of petrol is known to be charged or not
# description: >-
#   London asks fourth-stage petrol or sixth-stage diesel of cars and vans: a petrol
#   vehicle that is free to drive there turns into one that pays every day when it becomes
#   a diesel, unless the engine is proven of the sixth stage. Zones elsewhere have their
#   own lists. The exemption of vehicles above forty years goes with the historic tax
#   class.
# related_resources:
# - ref: https://tfl.gov.uk/modes/driving/ultra-low-emission-zone/ways-to-meet-the-standard
#   description: Transport for London, ways to meet the standard
# custom:
#   level: note
#   hold: plan
#   basis: agency-guidance
#   source: >-
#     reference notes on the page of Transport for London on its emission zone; the rest
#     from club pages
#   outcomes:
#   - met
#   - unproven
#   - not applicable
#   remedy: >-
#     ask with the certificate of conformity of the donor, or decide that the vehicle
#     never goes there, and say so in the answer on file
#   question:
#     ask: >-
#       Which emission standard will this vehicle be held to with this engine, and which
#       paper proves it?
#     office: Transport for London, and the charging authority of any other zone
#   reviewed: 2026-11-25
#   since: 0.1.0
#   waivable: true
package regions.gb.charging_zone

import data.lib.judge

applies := judge.all_of([
	judge.when("build.engine.fuel", {"diesel"}),
	# The paper names the new fuel once the swap is registered; the question stays answered.
	judge.any_of([
		judge.when_differs("build.outgoing_engine.fuel", "build.engine.fuel"),
		judge.when_differs("build.registration.title_fuel", "build.engine.fuel"),
	]),
])
