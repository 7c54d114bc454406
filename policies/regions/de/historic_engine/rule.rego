# METADATA
# title: the engine bears the historic plate
# description: >-
#   A historic vehicle with an engine that was not usual in its first ten years loses the
#   plate, and with it tax and access. Some readings accept only engines of the same
#   series.
# related_resources:
# - ref: https://hu-dortmund.de/?p=108
#   description: an inspection body on the report for historic vehicles, read on 2026-11-25
# custom:
#   level: note
#   hold: plan
#   basis: second-hand
#   source: >-
#     inspection bodies on their guideline under StVZO section 23, which itself was not
#     read; the stricter reading from a page of about 2007
#   outcomes:
#   - met
#   - unproven
#   - not applicable
#   remedy: >-
#     take proof of how the model was fitted in its first ten years, from the maker or
#     period print
#   question:
#     ask: >-
#       Was this design of engine usual in this vehicle in its first ten years, or was the
#       change made more than thirty years ago, so that the historic plate is kept?
#     office: engineer of a recognised inspection body
#   reviewed: 2026-11-25
#   since: 0.1.0
#   waivable: true
package regions.de.historic_engine

import data.lib.judge

applies := judge.all_of([
	judge.when("build.registration.plate_class", {"historic"}),
	judge.when_differs("build.outgoing_engine.family", "build.engine.family"),
])
