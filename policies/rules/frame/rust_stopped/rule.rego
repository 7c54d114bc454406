# METADATA
# title: rust is treated and sealed before it is covered
# description: >-
#   Every place where rust was found is sealed, or cut out and renewed, before engine and
#   tank cover it again. Rust under a new bracket goes on where nobody looks, and the
#   bracket leaves with a plate of the frame.
# custom:
#   level: should
#   hold: install
#   basis: common-practice
#   source: >-
#     common practice: down to sound metal, primer, seam sealer, wax
#   outcomes:
#   - met
#   - not met
#   - unproven
#   - not applicable
#   remedy: >-
#     treat it down to sound metal and seal it now; where it has eaten into the section, ask
#     the maker of the frame or a licensed body shop before anything is bolted there
#   caution: >-
#     rust removers and zinc primers poison, and fumes burn: air, gloves and a mask; no
#     flame near tank and lines
#   reviewed: 2026-11-25
#   since: 0.1.0
#   waivable: true
package rules.frame.rust_stopped

import data.lib.judge

applies := judge.when_listed("build.frame.rust")

findings contains judge.one_of(judge.of(id, "build.frame.rust.*.state"), {"sealed", "renewed"}) if {
	some id in judge.each("build.frame.rust")
}
