# METADATA
# title: a certifier licensed for it has accepted the swap
# description: >-
#   A certifier may issue only the certificates his licence covers. A modification done as
#   VSB 14 says is taken to comply, so the work has to follow it from the start. Which
#   engine changes are significant was not read: an older text that let the owner answer for
#   a small increase of capacity is superseded and not applied.
# related_resources:
# - ref: https://zoelaw.ai/legislation/road-transport-vehicle-registration-regulation-2017/sections/85
#   description: the same, clause 85
# custom:
#   level: note
#   hold: plan
#   basis: regulation
#   source: >-
#     clause 85(2) and (3) of the same regulation, read on 2026-11-25; clause 83, to which
#     modifications the Division applies, was not read
#   outcomes:
#   - met
#   - unproven
#   - not applicable
#   remedy: >-
#     choose the certifier first, by the codes of his licence, and let him say which
#     evidence he wants
#   question:
#     ask: >-
#       Is this engine change a modification to which the Division applies, and which parts
#       of VSB 14 and which evidence does the certifier ask for?
#     office: New South Wales, licensed certifier, or Transport for NSW
#   reviewed: 2026-11-25
#   since: 0.1.0
#   waivable: true
package regions["au-nsw"].certifier_consulted

import data.lib.judge

applies := judge.when_differs("build.outgoing_engine.family", "build.engine.family")
