# METADATA
# title: exhaust of a truck leaves behind driver and windows
# description: >-
#   On a property-carrying vehicle the exhaust is discharged behind the part made for
#   driver and passengers: to the rear of the body, or out of its side behind every
#   window that opens. A stack or a short side pipe sends the gas of an idling diesel
#   into the cab.
# related_resources:
# - ref: https://app.leg.wa.gov/wac/default.aspx?cite=204-10-038
#   description: WAC 204-10-038, exhaust system
# custom:
#   level: must
#   hold: inspection
#   basis: regulation
#   source: WAC 204-10-038(1) and (2)
#   outcomes:
#   - met
#   - not met
#   - unproven
#   - not applicable
#   remedy: >-
#     lead the tailpipe on to behind the last window that opens, without a leak on the
#     way
#   caution: >-
#     carbon monoxide kills without a smell: run the engine outdoors or under extraction
#   reviewed: 2026-11-25
#   since: 0.1.0
#   waivable: true
package regions["us-wa"].exhaust_outlet

import data.lib.judge

applies := judge.when("build.chassis.category", {"light-truck", "truck"})

findings contains judge.one_of("build.exhaust.outlet_clear", {true})
