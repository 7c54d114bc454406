# METADATA
# title: exhaust of a commercial truck ends behind the cab
# description: >-
#   On a commercial vehicle the exhaust leaves behind the cab, or near its rear where it
#   rises above it, so that the driver does not breathe it.
# custom:
#   level: should
#   hold: inspection
#   basis: second-hand
#   source: >-
#     reference notes on 49 CFR 393.83; that it begins at 10,001 lb of gross rating is from
#     memory and not applied here
#   outcomes:
#   - met
#   - not met
#   - unproven
#   - not applicable
#   remedy: lead the tailpipe to behind the cab, clear of its openings and of the fuel tank
#   reviewed: 2026-11-25
#   since: 0.1.0
#   waivable: true
package regions.us.commercial_outlet

import data.lib.judge

applies := judge.when("build.registration.use", {"commercial"})

findings contains judge.one_of("build.exhaust.outlet_clear", {true})
