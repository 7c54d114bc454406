# METADATA
# title: the stationary noise is within the limit of its date
# description: >-
#   A passenger car, a forward-control or an off-road passenger vehicle that is not approved
#   to design rule 83/00 makes no more than 96 dB(A), or 90 dB(A) where it was made on or
#   after 1 November 1983. The rule began with models of January 2005, so vehicles made
#   before are taken as not approved to it. Cars by category MA, MB and MC are examined;
#   noise_other asks for all others. A louder vehicle is off the road the day somebody
#   listens.
# related_resources:
# - ref: http://www5.austlii.edu.au/au/legis/vic/num_reg/epr2021n47o2021474/s143.html
#   description: Environment Protection Regulations 2021, regulation 143
# - ref: https://www.legislation.gov.au/F2005L03523/asmade/2005-11-15/text/original/epub/OEBPS/document_1/document_1.html
#   description: design rule 83/00, as made
# custom:
#   level: must
#   hold: inspection
#   basis: regulation
#   source: >-
#     Environment Protection Regulations 2021 of Victoria, regulation 143, read as made on
#     2026-11-25; the start of design rule 83/00 on its first page
#   needs_basis:
#     inspection: measured with evidence
#   outcomes:
#   - met
#   - not met
#   - unproven
#   - not applicable
#   remedy: fit a larger muffler or a second one, and have the level measured again
#   caution: wear hearing protection; the vehicle stands braked and chocked, in the open
#   reviewed: 2026-11-25
#   since: 0.1.0
#   waivable: true
package regions["au-vic"].noise

import data.lib.judge

applies := judge.all_of([
	judge.when("build.chassis.approval_category", {"MA", "MB", "MC"}),
	judge.negate(judge.when_since("build.chassis.built", "2005-01-01")),
])

_newer := judge.when_since("build.chassis.built", "1983-11-01").state

findings contains judge.limit_max("build.engine.noise", "limits.au_vic.noise_from_november_1983") if _newer == "yes"

findings contains judge.limit_max("build.engine.noise", "limits.au_vic.noise_before_november_1983") if _newer == "no"
