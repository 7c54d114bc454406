# METADATA
# title: an automatic keeps its oil cool on the hill
# description: >-
#   Laden, uphill at full load until it settles, the oil of an automatic stays within
#   what its maker allows. The converter matched to another torque slips on every climb,
#   and the gearbox is bought twice.
# custom:
#   level: should
#   hold: inspection
#   basis: manufacturer
#   source: >-
#     highest oil temperature from the gearbox's maker, or common practice where he
#     names none, against a reading on a climb
#   needs_basis:
#     inspection: measured
#   outcomes:
#   - met
#   - not met
#   - unproven
#   - not applicable
#   remedy: >-
#     fit a larger oil cooler in the air ahead of the radiator, or a converter matched
#     to the engine
#   caution: >-
#     stop where the road is wide and let the engine idle before it is switched off hot
#   reviewed: 2026-11-25
#   since: 0.1.0
#   waivable: true
package rules.running.gearbox_oil

import data.lib.judge

applies := judge.when("build.transmission.type", {"automatic"})

_limit := "build.transmission.oil_limit" if not judge.is_none("build.transmission.oil_limit")

_limit := "limits.running.gearbox_oil" if judge.is_none("build.transmission.oil_limit")

findings contains judge.about(
	"transmission.oil_limit",
	judge.limit_max(judge.newest("gearbox_oil_temperature", "climb"), _limit),
)
