# METADATA
# title: it is known which exhaust test the vehicle takes
# description: >-
#   With another engine the test goes by the older of engine and vehicle, and it is for
#   the owner to prove the age of the engine; an engine that was only modified is tested
#   by the age of the vehicle. A vehicle with a Q number is told to be tested as one of
#   before August 1975. A removed particulate filter fails where the vehicle, or the
#   engine, came with one. Not to be tested, as the oldest are not, is not to be legal:
#   smoke and noise are offences on the road at any age.
# related_resources:
# - ref: http://www.motuk.com/mot_manual/6-4.asp
#   description: copy of an older test manual, read on 2026-11-25
# custom:
#   level: note
#   hold: plan
#   basis: second-hand
#   source: >-
#     copy of an older British test manual (petrol engines); diesel bands and the
#     particulate filter from trade press and memory. Dates in circulation for old diesels
#     tested by eye differ: 1 August 1979 and 1 January 1980; and 1 January 2014 stands
#     beside the sixth stage for the lowest limit. The manual in force was not read
#   outcomes:
#   - met
#   - unproven
#   - not applicable
#   remedy: >-
#     buy the engine with a letter of its maker or the registration certificate of the
#     donor that dates it, and ask with its number
#   question:
#     ask: >-
#       Which exhaust test and limits apply to this vehicle with this engine, which proof
#       of the age of the engine is accepted, and which catalysts and filters must be
#       there?
#     office: Driver and Vehicle Standards Agency
#   reviewed: 2026-11-25
#   since: 0.1.0
#   waivable: true
package regions.gb.exhaust_test

import data.lib.judge

applies := judge.when("build.engine.fuel", {"diesel", "petrol", "lpg", "cng"})
