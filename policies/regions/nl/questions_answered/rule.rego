# METADATA
# title: Dutch questions have RDW's answer
# description: >-
#   The alterations that the regulation lists are approved before the altered vehicle is
#   admitted to the road, and a vehicle that moves to another category meets the
#   requirements of that one. Every question that this build raises has its answer on
#   paper before money is spent.
# related_resources:
# - ref: http://wetten.overheid.nl/BWBR0025798/Hoofdstuk6/1/Artikel61/geldigheidsdatum_29-11-2011
#   description: Regeling voertuigen, article 6.1, text of 29 November 2011, read on 2026-11-25
# custom:
#   level: must
#   hold: plan
#   basis: regulation
#   source: >-
#     Regeling voertuigen, article 6.1(1) and (2), text in force on 29 November 2011; that
#     engines are on its list is second-hand
#   outcomes:
#   - met
#   - unproven
#   - not applicable
#   remedy: ask RDW and put its answer with the evidence, kind authority-answer
#   collects: questions
#   reviewed: 2026-11-25
#   since: 0.1.0
#   waivable: false
package regions.nl.questions_answered

import data.lib.judge

# Each question says itself when it is raised.
applies := judge.always
