# METADATA
# title: mount bolts bear what the mounts put on them
# description: >-
#   Each group of bolts carries its shear, its pull and both together within what EN
#   1993-1-8 lets bolts of its class bear. A bracket on bolts from the scrap box leaves the
#   frame on a corrugated road.
# related_resources:
# - ref: https://steelcalculator.app/reference/eu-bolt-grade-selector/
#   description: bolts in shear and tension by EN 1993-1-8
# custom:
#   level: should
#   hold: install
#   basis: standard
#   source: >-
#     EN 1993-1-8 table 3.4 with γM2 = 1.25, as tabled at the page named; inch grades as the
#     classes nearest to them
#   outcomes:
#   - met
#   - not met
#   - unproven
#   - not applicable
#   remedy: >-
#     use more or larger bolts, or a higher class by its head marks; let a spigot or a weld
#     take the shear
#   reviewed: 2026-11-25
#   since: 0.1.0
#   waivable: true
package rules.frame.bolts_bear

import data.lib.judge

applies := judge.when_listed("build.frame.bolts")

# Shear alone is together with no pull.
_uses := {"figures.fasteners.tension_use.*", "figures.fasteners.together_use.*"}

findings contains judge.worst([judge.limit_max(judge.of(id, path), "limits.frame.bolt_use") | some path in _uses]) if {
	some id in judge.each("build.frame.bolts")
}
