# METADATA
# title: the SAAQ says whether the swap needs inspection
# description: >-
#   A vehicle altered so that stability, braking or its compliance with the federal safety
#   act may suffer is not put into operation before the alterations were inspected, unless
#   the SAAQ considers that nobody's safety is touched. More power is listed as allowed; a
#   heavier engine, another fuel or moved mounts may not be. It can ask for an engineer's
#   report and for changes.
# related_resources:
# - ref: https://www.legisquebec.gouv.qc.ca/en/version/cs/C-24.2?code=se:214&history=20220516
#   description: Highway Safety Code, section 214, version of May 2022, read on 2026-11-25
# - ref: https://saaq.gouv.qc.ca/immatriculation/vehicule-artisanal-modifie/vehicule-modifie
#   description: SAAQ on modified vehicles, read on 2026-11-25
# custom:
#   level: note
#   hold: plan
#   basis: statute
#   source: >-
#     Highway Safety Code, section 214, first, second and fifth paragraphs; steps from the
#     SAAQ page
#   outcomes:
#   - met
#   - unproven
#   - not applicable
#   remedy: >-
#     write before the work, with both engines, masses and drawings of the mounts; ask for
#     the name of an engineer
#   question:
#     ask: >-
#       Does this change of engine need an inspection of the alterations, and an
#       engineer's report, or is it considered not to touch safety?
#     office: Société de l'assurance automobile du Québec
#   reviewed: 2026-11-25
#   since: 0.1.0
#   waivable: true
package regions["ca-qc"].alteration

import data.lib.judge

applies := judge.any_of([
	judge.when_differs("build.outgoing_engine.family", "build.engine.family"),
	judge.when_differs("build.registration.title_fuel", "build.engine.fuel"),
])
