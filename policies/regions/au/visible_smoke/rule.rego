# METADATA
# title: no visible smoke for ten seconds without a break
# description: >-
#   Light vehicle standards are reported to bound smoke that stays visible for 10 s without
#   a break, steam and heat haze excepted. How long a puff lingers after a snap of the
#   throttle is another measure and is not compared.
# related_resources:
# - ref: https://kirra.austlii.edu.au/au/legis/tas/num_reg/vatsar20182018n61549/s22.html
#   description: Tasmania, emissions of light vehicles
# - ref: http://classic.austlii.edu.au/au/legis/nsw/repealed_reg/poteoar2021601/s15.html
#   description: New South Wales, clean air regulation of 2021, clause 15, repealed
# custom:
#   level: note
#   hold: inspection
#   basis: second-hand
#   source: >-
#     regulation 125 of Tasmania of 2018, 10 s or more, vehicles built after 1930; clause 15
#     of the New South Wales clean air regulation of 2021, more than 10 s, repealed. Each
#     was read, for its own state; the texts in force elsewhere were not
#   outcomes:
#   - met
#   - unproven
#   - not applicable
#   remedy: have the engine set so that it clears within a few seconds under load
#   caution: exhaust goes outdoors
#   question:
#     ask: >-
#       Which limit for visible smoke is in force in this state, and does the vehicle keep
#       to it?
#     office: registration authority of the state, and the engineer it recognises
#   reviewed: 2026-11-25
#   since: 0.1.0
#   waivable: true
package regions.au.visible_smoke

import data.lib.judge

applies := judge.negate(judge.when("build.engine.fuel", {"electric"}))
