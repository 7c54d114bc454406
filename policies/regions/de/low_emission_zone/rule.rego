# METADATA
# title: the sticker for emission zones is known
# description: >-
#   A petrol vehicle with a controlled catalyst has the green sticker; a diesel needs
#   about the fourth stage or a retrofit to it. A swap to an older diesel shuts the
#   vehicle out of the zones.
# custom:
#   level: note
#   hold: plan
#   basis: memory
#   source: from memory; particle figures of the stages from an owners' page
#   outcomes:
#   - met
#   - unproven
#   - not applicable
#   remedy: ask with the emission key of the donor before buying it
#   question:
#     ask: Which emission key, tax and sticker does this vehicle get with this engine?
#     office: registration authority of the district
#   reviewed: 2026-11-25
#   since: 0.1.0
#   waivable: true
package regions.de.low_emission_zone

import data.lib.judge

applies := judge.all_of([
	judge.when("build.engine.fuel", {"diesel"}),
	judge.when_differs("build.registration.title_fuel", "build.engine.fuel"),
])
