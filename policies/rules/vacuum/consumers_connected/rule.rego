# METADATA
# title: everything that needs vacuum is connected
# description: >-
#   Each consumer of vacuum is connected to the source. The hose that was forgotten is found
#   when a flap, a hub or the brake does not work.
# custom:
#   level: should
#   hold: first-start
#   basis: common-practice
#   source: >-
#     common practice: draw the hoses before the old engine comes out, tick them off on the
#     new one
#   outcomes:
#   - met
#   - not met
#   - unproven
#   - not applicable
#   remedy: >-
#     connect it, with a check valve before the booster
#   caution: >-
#     brakes are worked on and proved by who is trained for it, where local law asks for it;
#     nobody drives on an unproved brake beyond walking pace on closed ground
#   reviewed: 2026-11-25
#   since: 0.1.0
#   waivable: false
package rules.vacuum.consumers_connected

import data.lib.judge

applies := judge.when_listed("build.vacuum.consumers")

findings contains judge.one_of(judge.of(id, "build.vacuum.consumers.*.connected"), {true}) if {
	some id in judge.each("build.vacuum.consumers")
}
