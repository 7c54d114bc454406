# METADATA
# title: the heater of a shop job still clears the windscreen
# description: >-
#   The defroster lives on coolant heat. Hoses left capped, or a diesel that runs too cool
#   to heat, take away what the safety standard on defrosting asked for.
# related_resources:
# - ref: https://ftp.gwdg.de/pub/linux/clienux/descriptive/cLIeNUX_top_directory/packages/usc4n.tgz:49/30122
#   description: copy of 49 U.S.C. 30122 from the U.S. Code Online
# custom:
#   level: should
#   hold: road-test
#   basis: memory
#   source: 49 CFR 571.103, from memory, with 49 U.S.C. 30122(b), read in a copy
#   outcomes:
#   - met
#   - not met
#   - unproven
#   - not applicable
#   remedy: connect the heater, fit the thermostat the engine wants, and try it cold
#   reviewed: 2026-11-25
#   since: 0.1.0
#   waivable: true
package regions.us.defrost

import data.lib.judge

applies := judge.all_of([
	judge.when("build.registration.installer", {"shop"}),
	judge.when_there("build.hvac"),
])

findings contains judge.one_of("build.hvac.heater_works", {true})
