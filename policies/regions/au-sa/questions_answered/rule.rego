# METADATA
# title: South Australia's questions have an answer
# description: >-
#   A larger engine must not be fitted before the state has said what it requires. Who
#   builds first may be told to change brakes, axles or the engine again; every question
#   that this build raises has its answer on paper.
# related_resources:
# - ref: https://www.sa.gov.au/topics/driving-and-transport/vehicles/vehicle-standards-and-modifications/engine-and-exhaust-modifications
#   description: South Australia on engine and exhaust modifications
# - ref: https://vdocuments.site/light-vehicle-modification-sagovau-a-report-from-a-light-vehicle-engineering.html
#   description: fact sheet on light vehicle modification, copy
# custom:
#   level: must
#   hold: plan
#   basis: agency-guidance
#   source: >-
#     page of the state on engine and exhaust modifications: a statement of requirements is
#     obtained before the engine is installed
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
package regions["au-sa"].questions_answered

import data.lib.judge

# Each question says itself when it is raised.
applies := judge.always
