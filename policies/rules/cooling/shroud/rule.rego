# METADATA
# title: a shroud leads the air of the fan through the core
# description: >-
#   A shroud covers most of the core, and the tips of an engine-driven fan run close inside
#   it. Without one the fan draws its own hot air round its tips, and only the circle in
#   front of it cools.
# custom:
#   level: should
#   hold: install
#   basis: common-practice
#   source: >-
#     common practice: 80 per cent of the core and more; tips within 1 in on a fan of 18 in,
#     where engine and shroud move apart
#   outcomes:
#   - met
#   - not met
#   - unproven
#   - not applicable
#   reasons:
#     no-shroud: >-
#       there is no shroud, and only the circle in front of the fan gets air
#   remedy: >-
#     make a shroud over the whole core with the fan half in its ring, and fix the ring to
#     the engine where it must be tighter
#   caution: >-
#     keep hands, clothes and tools out of the fan, stop the engine to measure, and never
#     stand in line with a turning fan; an electric one starts by itself
#   reviewed: 2026-11-25
#   since: 0.1.0
#   waivable: true
package rules.cooling.shroud

import data.lib.judge

applies := judge.when_there("build.cooling")

findings contains judge.because(
	"no-shroud",
	judge.present_at("build.cooling.shroud_height", "install"),
) if {
	judge.is_none("build.cooling.shroud_height")
}

findings contains judge.about(
	"cooling.shroud_height",
	judge.limit_min("figures.cooling.shroud_coverage", "limits.cooling.shroud_coverage"),
) if {
	not judge.is_none("build.cooling.shroud_height")
}

findings contains judge.about(
	"cooling.tip_clearance",
	judge.limit_max("figures.cooling.tip_clearance_share", "limits.cooling.tip_clearance"),
) if {
	not judge.is_none("build.cooling.shroud_height")
	not judge.is_none("build.cooling.fan_ratio")
}
