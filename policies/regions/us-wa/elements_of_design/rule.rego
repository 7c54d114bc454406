# METADATA
# title: the engine change keeps the emission design
# description: >-
#   Nobody may take off or make inoperable a component, or change an element of design
#   of a vehicle, so that it could emit other than it did; what is taken apart for
#   repair is restored. Read word by word this reaches an engine change, and it holds
#   although nobody tests vehicles any more.
# related_resources:
# - ref: https://apps.leg.wa.gov/WAC/default.aspx?cite=173-421&full=true
#   description: chapter 173-421 WAC
# custom:
#   level: note
#   hold: plan
#   basis: regulation
#   source: >-
#     WAC 173-421-100, of 1987, its first sentence and the first of its conditions; the
#     others were not read
#   outcomes:
#   - met
#   - unproven
#   - not applicable
#   remedy: >-
#     ask with the list of emission controls of both engines, before the old ones are
#     thrown away
#   question:
#     ask: >-
#       Under which of the conditions of WAC 173-421-100 may this engine, with its own
#       emission controls, replace the original one?
#     office: Washington State Department of Ecology, air quality
#   reviewed: 2026-11-25
#   since: 0.1.0
#   waivable: true
package regions["us-wa"].elements_of_design

import data.lib.judge

applies := judge.when_differs("build.outgoing_engine.family", "build.engine.family")
