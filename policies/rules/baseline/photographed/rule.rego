# METADATA
# title: labels, loom and hoses were photographed as found
# description: >-
#   Labels and plates, the loom with its connectors, and the way of every hose and line were
#   photographed before the old engine came out. A label goes with the fender it sits on,
#   and two vacuum hoses of one size look the same on the floor.
# custom:
#   level: should
#   hold: strip
#   basis: own-record
#   source: >-
#     what the hold point strip is for: what dismantling destroys
#   outcomes:
#   - met
#   - not met
#   - unproven
#   reasons:
#     taken-apart: by then the old engine was out
#   remedy: >-
#     photograph them now, with a tag at each connector; where it is too late, find an
#     untouched vehicle of the same kind and photograph that one
#   reviewed: 2026-11-25
#   since: 0.1.0
#   waivable: true
package rules.baseline.photographed

import data.lib.judge

_subjects := {
	"build.baseline.photographed.labels",
	"build.baseline.photographed.loom",
	"build.baseline.photographed.hoses",
}

findings contains judge.dated_at(path, "strip") if some path in _subjects

findings contains judge.because("taken-apart", judge.not_after(path, "build.outgoing_engine.date", "mockup")) if {
	some path in _subjects
}
