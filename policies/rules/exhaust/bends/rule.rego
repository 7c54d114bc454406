# METADATA
# title: bends are mandrel-bent, none is mitred or crushed
# description: >-
#   Every bend of the run keeps its bore round the corner. A mitred elbow takes as much
#   pressure as 66 bores of straight pipe, three times a bend of a wide radius; one crushed
#   in a muffler shop's press is a size smaller where it matters.
# related_resources:
# - ref: https://www.scribd.com/document/78601980/Back-Pressure-Calculator
#   description: bends as lengths of straight pipe
# custom:
#   level: should
#   hold: mockup
#   basis: handbook
#   source: >-
#     common practice: mandrel bends; bends as lengths of straight pipe by a back pressure
#     calculator
#   outcomes:
#   - met
#   - not met
#   - unproven
#   - not applicable
#   remedy: >-
#     cut mandrel bends to length and weld them, or have the pipe bent on a mandrel
#   caution: >-
#     weld outdoors or with the fumes drawn off, galvanised and aluminised pipe above all;
#     battery off, fuel and brake lines shielded, extinguisher at hand
#   reviewed: 2026-11-25
#   since: 0.1.0
#   waivable: true
package rules.exhaust.bends

import data.lib.judge

applies := judge.when_listed("build.exhaust.segments")

findings contains judge.one_of(
	judge.of(id, "build.exhaust.segments.*.bend"),
	{"straight", "elbow-45", "long-90", "short-90"},
) if {
	some id in judge.each("build.exhaust.segments")
}
