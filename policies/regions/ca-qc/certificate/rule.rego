# METADATA
# title: the certificate of inspection is there
# description: >-
#   Where an inspection is due the centre gathers invoices and photographs, the SAAQ
#   analyses them, and the mechanical inspection comes last. The certificate proves the
#   day it was given: a later alteration, or a doubting police officer, starts it again.
# related_resources:
# - ref: https://www.legisquebec.gouv.qc.ca/en/version/cs/C-24.2?code=se:214&history=20220516
#   description: Highway Safety Code, section 214, version of May 2022, read on 2026-11-25
# - ref: https://saaq.gouv.qc.ca/immatriculation/vehicule-artisanal-modifie/vehicule-modifie
#   description: SAAQ on modified vehicles, read on 2026-11-25
# - ref: https://saaq.gouv.qc.ca/en/road-safety/modes-transportation/automobile/modified-cars
#   description: SAAQ on modified cars, read on 2026-11-25
# custom:
#   level: note
#   hold: inspection
#   basis: statute
#   source: >-
#     Highway Safety Code, section 214, third and fourth paragraphs; SAAQ pages on the
#     certificate
#   outcomes:
#   - met
#   - unproven
#   - not applicable
#   remedy: >-
#     keep every invoice, photograph mounts before they are covered, and carry the
#     certificate in the vehicle
#   question:
#     ask: >-
#       Is the certificate of inspection of the alterations given, or not required, and is
#       registration to be changed?
#     office: Société de l'assurance automobile du Québec
#   reviewed: 2026-11-25
#   since: 0.1.0
#   waivable: true
package regions["ca-qc"].certificate

import data.lib.judge

applies := judge.any_of([
	judge.when_differs("build.outgoing_engine.family", "build.engine.family"),
	judge.when_differs("build.registration.title_fuel", "build.engine.fuel"),
])
