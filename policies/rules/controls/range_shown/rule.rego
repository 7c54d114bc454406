# METADATA
# title: the driver sees which drive range is in
# description: >-
#   Lamp or lever mark shows the range of the transfer case that is really in. With a
#   linkage of other length four-wheel drive stays in on the tarmac, unseen, and winds
#   up until a shaft or the case gives.
# custom:
#   level: should
#   hold: road-test
#   basis: common-practice
#   source: >-
#     common practice: engage each range with the wheels free and turn a front shaft by
#     hand
#   outcomes:
#   - met
#   - not met
#   - unproven
#   - not applicable
#   remedy: >-
#     set the linkage to length, move the switch of the lamp, and try each range with
#     the wheels free
#   caution: >-
#     hold the vehicle on stands under frame or axles before a shaft is turned by hand
#   reviewed: 2026-11-25
#   since: 0.1.0
#   waivable: true
package rules.controls.range_shown

import data.lib.judge

applies := judge.when_there("build.transfer_case")

findings contains judge.one_of("build.controls.range_shown", {true})
