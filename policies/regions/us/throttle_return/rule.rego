# METADATA
# title: two springs bring the throttle of a shop job to idle
# description: >-
#   A throttle, the lever of an injection pump with it, returns to idle by at least two
#   sources of energy, so that one broken spring does not leave the engine at speed. A shop
#   may not take one away. Owners at work on their own vehicle are not named in the
#   statute: the hazard is the same.
# related_resources:
# - ref: https://ftp.gwdg.de/pub/linux/clienux/descriptive/cLIeNUX_top_directory/packages/usc4n.tgz:49/30122
#   description: copy of 49 U.S.C. 30122 from the U.S. Code Online
# - ref: https://m.777doc.com/doc-9512465.html
#   description: copy of 49 CFR 571.124, edition of October 2006
# custom:
#   level: must
#   hold: install
#   basis: statute
#   source: >-
#     49 U.S.C. 30122(b), and 49 CFR 571.124 S5.1, both read in copies; the standard is
#     dated 1 September 1973, and model years from 1973 on are taken as covered
#   outcomes:
#   - met
#   - not met
#   - unproven
#   - not applicable
#   remedy: >-
#     fit a second spring that acts on the lever by itself, and try each with the other
#     unhooked
#   caution: >-
#     try the return with the engine stopped first; an engine that will not come down is
#     shut off at the fuel
#   reviewed: 2026-11-25
#   since: 0.1.0
#   waivable: false
package regions.us.throttle_return

import data.lib.judge

applies := judge.all_of([
	judge.when("build.registration.installer", {"shop"}),
	judge.when_min("build.chassis.model_year", "limits.us.throttle_standard_year"),
])

findings contains judge.limit_min("build.controls.return_springs", "limits.us.return_sources")
