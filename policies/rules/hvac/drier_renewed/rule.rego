# METADATA
# title: a circuit that was opened has a new drier
# description: >-
#   When the refrigerant circuit was opened its receiver-drier or accumulator was renewed.
#   Within hours the drier fills with water from the air; the water turns to acid and ice,
#   and the compressor dies within a season.
# custom:
#   level: should
#   hold: road-test
#   basis: common-practice
#   source: >-
#     common practice, as workshop manuals ask: a new drier whenever the circuit has stood
#     open
#   outcomes:
#   - met
#   - not met
#   - unproven
#   - not applicable
#   remedy: >-
#     fit a new drier, last of all and just before the circuit is evacuated, and cap every
#     open line until then
#   caution: >-
#     refrigerant blinds, freezes and displaces air: goggles, gloves, open doors and no
#     flame; only a certified technician recovers and charges it, as local law says
#   reviewed: 2026-11-25
#   since: 0.1.0
#   waivable: true
package rules.hvac.drier_renewed

import data.lib.judge

applies := judge.when("build.hvac.refrigerant_opened", {true})

findings contains judge.one_of("build.hvac.drier_renewed", {true})
