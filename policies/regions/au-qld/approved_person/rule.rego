# METADATA
# title: an approved person has accepted the engine change
# description: >-
#   A complex modification needs an approved person who holds the codes it falls under. The
#   state lists variations of its own to section LA of the national code, whose text was not
#   read, so that an engine accepted elsewhere is not accepted here by itself.
# related_resources:
# - ref: https://documents.pub/document/pdf-modification-motor-vehicles2.html
#   description: Queensland Transport, booklet on modifications, 2008, copy
# - ref: https://pdfslide.us/documents/business-rules-for-approved-persons-vehicle-modifications.html
#   description: business rules for approved persons, version 4.0 of 2015, copy
# - ref: https://www.tmr.qld.gov.au/business-industry/Accreditations/Approved-Person-Scheme/Vehicle-modification-codes
#   description: list of modification codes, Queensland
# custom:
#   level: note
#   hold: plan
#   basis: agency-guidance
#   source: >-
#     booklet of 2008, complex modifications; code list of the department; heading 2.2.1 of
#     the business rules, version 4.0, on the variation of section LA
#   outcomes:
#   - met
#   - unproven
#   - not applicable
#   remedy: >-
#     show an approved person the list of changes and the data of both engines before buying
#   question:
#     ask: >-
#       Under which codes, and under which variation of section LA of the state, is this
#       engine change with its gearbox, axle and brakes certified?
#     office: Queensland approved person, Department of Transport and Main Roads
#   reviewed: 2026-11-25
#   since: 0.1.0
#   waivable: true
package regions["au-qld"].approved_person

import data.lib.judge

applies := judge.when_differs("build.outgoing_engine.family", "build.engine.family")
