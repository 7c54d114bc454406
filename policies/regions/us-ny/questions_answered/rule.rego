# METADATA
# title: New York's questions have the authority's answer
# description: >-
#   Emission controls that a vehicle or its engine is required to have may not be
#   disconnected, taken off or made less effective than designed, and the inspection
#   looks. Whether an engine change keeps what is required is for the state to say;
#   every question that this build raises has its answer on paper.
# related_resources:
# - ref: https://govt.westlaw.com/nycrr/Document/I4e8f9f0bcd1711dda432a117e6e0f345?viewType=FullText&originationContext=documenttoc&transitionType=CategoryPageItem&contextData=%28sc.Default%29
#   description: 6 NYCRR 217-5.4, owner and operator
# - ref: https://regulations.justia.com/states/new-york/title-15/chapter-i/subchapter-f/part-79/section-79-24/
#   description: 15 NYCRR 79.24, emission inspection
# custom:
#   level: must
#   hold: plan
#   basis: regulation
#   source: >-
#     6 NYCRR 217-5.4(a)(2) and (3) for heavy diesels; 15 NYCRR 79.24 for the inspection
#     of others
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
package regions["us-ny"].questions_answered

import data.lib.judge

# Each question says itself when it is raised.
applies := judge.always
