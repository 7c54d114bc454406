# METADATA
# title: it is settled whether the vehicle is reconstructed
# description: >-
#   A vehicle materially altered by removing, adding or substituting essential parts,
#   but still recognisable as its make, is titled as reconstructed. The regulation does
#   not say whether an engine from another make does it, and the Department's own words
#   are said to count the engine among major components. With that title come another
#   application, bills of sale, a mechanic's report and photographs.
# related_resources:
# - ref: https://www.pacode.com/secure/data/067/chapter19/s19.2.html
#   description: 67 Pa. Code 19.2, reconstructed vehicle
# - ref: https://casetext.com/regulation/pennsylvania-code-rules-and-regulations/title-67-transportation/part-i-department-of-transportation/subpart-a-vehicle-code-provisions/article-ii-title/chapter-19-specially-constructed-vehicles-reconstructed-vehicles-and-street-rods/section-193-application-for-title-for-reconstructed-vehicles-or-specially-constructed-vehicles
#   description: 67 Pa. Code 19.3, what the title application holds
# custom:
#   level: note
#   hold: plan
#   basis: regulation
#   source: >-
#     67 Pa. Code 19.2 and 19.3, read in copies; that the engine counts as a major
#     component is second-hand
#   outcomes:
#   - met
#   - unproven
#   - not applicable
#   remedy: >-
#     keep titles or bills of sale of donor and engine, and photograph front, rear and
#     side, signed and dated, while the work goes on
#   question:
#     ask: >-
#       Does this engine make the vehicle a reconstructed one, and which documents does
#       the Department want for its title?
#     office: Pennsylvania Department of Transportation, bureau of motor vehicles
#   reviewed: 2026-11-25
#   since: 0.1.0
#   waivable: true
package regions["us-pa"].reconstructed_title

import data.lib.judge

applies := judge.when_differs("build.outgoing_engine.family", "build.engine.family")
