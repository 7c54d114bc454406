# METADATA
# title: a paper shows the new displacement and fuel
# description: >-
#   For a smaller engine or another fuel the registration office wants written evidence: a
#   receipt for the engine, or a letter from its maker, the insurer or the garage that
#   fitted it. Without it tax stays as it was, and an owner who swapped it alone has no
#   garage to ask afterwards.
# related_resources:
# - ref: https://www.gov.uk/exchange-tax-disc
#   description: archived government page on changing vehicle tax
# custom:
#   level: should
#   hold: handover
#   basis: agency-guidance
#   source: >-
#     reference notes on archived government pages on changing vehicle tax; what is
#     accepted today, such as inspection reports, is from memory
#   outcomes:
#   - met
#   - not met
#   - unproven
#   - not applicable
#   remedy: >-
#     get a receipt on headed paper that names engine number, displacement and fuel when
#     the engine is bought
#   reviewed: 2026-11-25
#   since: 0.1.0
#   waivable: true
package regions.gb.engine_evidence

import data.lib.judge

applies := judge.any_of([
	judge.negate(judge.when_min("build.engine.displacement", "build.outgoing_engine.displacement")),
	judge.when_differs("build.outgoing_engine.fuel", "build.engine.fuel"),
	judge.when_differs("build.registration.title_fuel", "build.engine.fuel"),
])

findings contains judge.supported("build.engine.displacement")

findings contains judge.supported("build.engine.fuel")
