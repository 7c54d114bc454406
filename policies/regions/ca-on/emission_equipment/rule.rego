# METADATA
# title: it is known which emission equipment has to stay
# description: >-
#   A motor vehicle must retain its original emission control systems. How that reads for
#   a vehicle whose engine was replaced, with a diesel in place of petrol or an engine of
#   another year, decides whether catalyst, vapour canister and diagnostics of the chassis
#   can go. The model year is that of the permit, not of the engine.
# related_resources:
# - ref: https://www.ontario.ca/laws/regulation/220169
#   description: O. Reg. 169/22, sections 1 and 2 and the opening of 3 read on 2026-11-25
# custom:
#   level: note
#   hold: plan
#   basis: regulation
#   source: >-
#     O. Reg. 169/22 sections 1 to 3; the text of section 3 was cut off after its first
#     words, sections 4 to 9 were not read
#   outcomes:
#   - met
#   - unproven
#   - not applicable
#   remedy: keep what came off, boxed and photographed, until the answer is there
#   question:
#     ask: >-
#       Which emission control systems must this vehicle have with a replaced engine:
#       those of the chassis, those the engine was certified with, or both?
#     office: Ontario Ministry of Transportation
#   reviewed: 2026-11-25
#   since: 0.1.0
#   waivable: true
package regions["ca-on"].emission_equipment

import data.lib.judge

applies := judge.any_of([
	judge.when_differs("build.outgoing_engine.family", "build.engine.family"),
	judge.when_differs("build.registration.title_fuel", "build.engine.fuel"),
])
