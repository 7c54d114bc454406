# METADATA
# title: the downpipe does not hang on the turbine
# description: >-
#   A flexible joint follows the turbine and a bracket carries the downpipe. Hung on the
#   turbine it cracks the housing, or rocks with the engine until the flange blows.
# custom:
#   level: should
#   hold: install
#   basis: common-practice
#   source: >-
#     common practice: a flexible joint within four pipe diameters of the turbine, and no
#     weight on it
#   outcomes:
#   - met
#   - not met
#   - unproven
#   - not applicable
#   remedy: >-
#     fit a flexible joint and a bracket from the engine or gearbox
#   caution: >-
#     let exhaust and charge pipes cool before working on them; run engines where exhaust
#     gas is drawn off
#   reviewed: 2026-11-25
#   since: 0.1.0
#   waivable: true
package rules.exhaust.downpipe_supported

import data.lib.judge

applies := judge.when("build.engine.induction", {"turbocharged", "turbocharged-intercooled"})

findings contains judge.one_of("build.exhaust.supported", {true})

findings contains judge.one_of("build.exhaust.flexible", {true})
