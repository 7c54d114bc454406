# METADATA
# title: engine, frame and body are tied to the battery
# description: >-
#   Grounds join the engine, the frame and the body to the battery, in the same size as the
#   feed where the starter's current returns. Without them the current finds throttle cables
#   and bearings.
# custom:
#   level: should
#   hold: install
#   basis: common-practice
#   source: >-
#     common practice: battery to engine, engine to frame, frame to body
#   outcomes:
#   - met
#   - not met
#   - unproven
#   reasons:
#     no-strap: no strap or cable joins the two
#   remedy: add the strap that is missing, on bare metal, and seal it
#   caution: disconnect the battery before working on grounds
#   reviewed: 2026-11-25
#   since: 0.1.0
#   waivable: true
package rules.electrical.grounds_complete

import data.lib.judge

# Every pair is looked for in both directions: a strap has no polarity.
_pairs := {"battery-engine": {"battery", "engine"}, "engine-frame": {"engine", "frame"}, "frame-body": {"frame", "body"}}

findings contains judge.about(
	concat(".", ["electrical.grounds", name]),
	judge.because("no-strap", judge.joined("build.electrical.grounds", pair)),
) if {
	some name, pair in _pairs
}
