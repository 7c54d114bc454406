# METADATA
# title: California's questions have the authority's answer
# description: >-
#   No vehicle that is required to have emission devices may be on the road without them,
#   correctly installed and in working order. What an engine change must keep is for the
#   state to say, whether or not the vehicle is in the periodic check; every question that
#   this build raises has its answer on paper.
# related_resources:
# - ref: http://www.leginfo.ca.gov/pub/07-08/bill/asm/ab_0801-0850/ab_829_bill_20071008_chaptered.html
#   description: Vehicle Code 27156 as amended in 2007
# - ref: https://opencalaccess.org/leginfo/bill_info/20250AB204699INT
#   description: digest of AB 2046 of 2026, which restates 27156 as it stands
# custom:
#   level: must
#   hold: plan
#   basis: statute
#   source: >-
#     Vehicle Code 27156(b) and (c): (b) read in the text of 2007 as far as its condition,
#     the rest in the digest of the legislative counsel of 2026
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
package regions["us-ca"].questions_answered

import data.lib.judge

# Each question says itself when it is raised.
applies := judge.always
