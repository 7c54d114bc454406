# METADATA
# title: the radiator sheds the heat of the engine
# description: >-
#   On the hottest day the radiator sheds what the engine gives to its coolant: the maker's
#   heat, or the share that engines of its type give where the maker prints none. A radiator
#   made for the engine that went out lets the new one boil on the first long grade.
# custom:
#   level: should
#   hold: plan
#   basis: physics
#   source: >-
#     heat balance; capacity in proportion to the inlet temperature difference, coolant and
#     air flow as tested
#   outcomes:
#   - met
#   - not met
#   - unproven
#   - not applicable
#   remedy: >-
#     choose a radiator of a larger face or another row, or let less preheated air reach it:
#     seal the gaps, move the condenser
#   reviewed: 2026-11-25
#   since: 0.1.0
#   waivable: true
package rules.cooling.radiator_sheds_heat

import data.lib.judge

# None for the capacity: the radiator that the maker of the chassis fitted for
# this engine, which the hottest day on the road proves.
applies := judge.when_there("build.cooling.radiator_capacity")

_subject := "cooling.radiator_capacity"

findings contains judge.about(
	_subject,
	judge.limit_max("figures.cooling.radiator_use", "limits.cooling.radiator_use"),
) if {
	not judge.is_none("build.cooling.heat_rejection")
}

findings contains judge.about(
	_subject,
	judge.limit_max("figures.cooling.radiator_use_by_share", "limits.cooling.radiator_use"),
) if {
	judge.is_none("build.cooling.heat_rejection")
}
