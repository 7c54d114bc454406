# METADATA
# title: cut openings are sealed before anybody drives
# description: >-
#   Every opening cut into floor, tunnel or dash panel is closed against gas, water and fire
#   before the road test. Exhaust gas finds the gap under the gear lever, and a driver does
#   not smell it.
# custom:
#   level: should
#   hold: road-test
#   basis: common-practice
#   source: >-
#     common practice: boot, plate with seal, or fire-resistant sealer
#   outcomes:
#   - met
#   - not met
#   - unproven
#   - not applicable
#   remedy: >-
#     close it with a boot, a plate on a seal, or a fire-resistant sealer, and look from
#     inside with a lamp below
#   caution: >-
#     carbon monoxide has no smell: run the engine outdoors until the cab is closed
#   reviewed: 2026-11-25
#   since: 0.1.0
#   waivable: true
package rules.frame.openings_sealed

import data.lib.judge

applies := judge.when_listed("build.frame.openings")

findings contains judge.one_of(judge.of(id, "build.frame.openings.*.sealed"), {true}) if {
	some id in judge.each("build.frame.openings")
}
