# METADATA
# title: Australia's questions have the authority's answer
# description: >-
#   The national code says what must be met and not who may say so: each state and territory
#   approves in its own way, and a pass against the code is not an approval. Whoever builds
#   first and asks later may own a vehicle that no engineer signs; every question that this
#   build raises has its answer on paper.
# related_resources:
# - ref: https://www.infrastructure.gov.au/infrastructure-transport-vehicles/vehicles/vehicle-design-regulation/rvs/bulletins/ncop
#   description: the department on VSB 14
# - ref: https://pdfslide.net/documents/section-la-engine-substitution-or-replacement-of-components-such-as-camshafts.html
#   description: VSB 14 section LA, version 2.0 of January 2011, copy
# custom:
#   level: must
#   hold: plan
#   basis: agency-guidance
#   source: >-
#     page of the Commonwealth department on VSB 14, and page 2 of its section LA, version
#     2.0: ask the registration authority before any work begins
#   outcomes:
#   - met
#   - unproven
#   - not applicable
#   remedy: >-
#     ask the office named with each question and put its answer with the evidence, kind
#     authority-answer
#   collects: questions
#   reviewed: 2026-11-25
#   since: 0.1.0
#   waivable: false
package regions.au.questions_answered

import data.lib.judge

# Each question says itself when it is raised.
applies := judge.always
