# METADATA
# title: the altered vehicle is approved by RDW
# description: >-
#   Another engine code, number of cylinders, displacement or fuel is approved vehicle by
#   vehicle; with the original engine kept, so is power more than 20 % off the registered
#   value. The aspects that the change touches are held to the rules of the first
#   admission, a change to gas or electric drive to those of the day of inspection.
#   Emission stage and axle loads that do not fit are found at the station, with the money
#   spent.
# related_resources:
# - ref: https://amklassiek.nl/de-rdw-dus/2015/05/27
#   description: RDW as a magazine quotes it, read on 2026-11-25
# - ref: https://www.autoweek.nl/autonieuws/artikel/auto-aanpassen-wanneer-krijg-je-te-maken-met-de-rdw/
#   description: trade press on what RDW asks for, read on 2026-11-25
# - ref: https://www.rdw.nl/zakelijk/branches/bedrijven/individuele-goedkeuring-aanvragen/brommer/wijzigingen-aan-een-brommer-of-snorfiets
#   description: RDW on alterations, the page for mopeds, read on 2026-11-25
# custom:
#   level: note
#   hold: plan
#   basis: second-hand
#   source: >-
#     RDW as two magazines quote it, the older saying that an increase or decrease counts;
#     which rules apply from RDW's page on mopeds, which names the same chapter of the
#     Regeling voertuigen
#   outcomes:
#   - met
#   - unproven
#   - not applicable
#   remedy: >-
#     ask RDW with registration number and both engine codes which aspects it will
#     examine, and book the inspection before the work
#   question:
#     ask: >-
#       Which aspects are examined for this change, to the rules of which date, and what
#       proof of exhaust, noise, brakes and masses is to be brought?
#     office: RDW, the vehicle authority
#   reviewed: 2026-11-25
#   since: 0.1.0
#   waivable: true
package regions.nl.individual_approval

import data.lib.judge

applies := judge.any_of([
	judge.when_differs("build.outgoing_engine.family", "build.engine.family"),
	judge.when_differs("build.registration.title_fuel", "build.engine.fuel"),
	judge.when_differs("build.outgoing_engine.displacement", "build.engine.displacement"),
	judge.negate(judge.when_max("figures.approval.power_change", "limits.nl.power_more")),
	judge.negate(judge.when_min("figures.approval.power_change", "limits.nl.power_less")),
])
