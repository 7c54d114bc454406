# METADATA
# title: a historic vehicle is thirty years old
# description: >-
#   A historic plate goes to vehicles that first came on the road at least thirty years
#   ago, are largely as they were built, well kept, and preserved for their history.
# related_resources:
# - ref: https://github.com/bundestag/gesetze/blob/master/f/fzv_2011/index.md
#   description: FZV of 2011, copy of the consolidated text, read on 2026-11-25
# - ref: https://haufe.de/finance/haufe-finance-office-premium/kraftfahrzeugsteuer-historische-fahrzeuge-oldtimer-ke-112-fzv-und-stvzo_idesk_PI20354_HI6993065.html
#   description: commentary on FZV section 2 no. 22, read on 2026-11-25
# custom:
#   level: must
#   hold: inspection
#   basis: regulation
#   source: >-
#     FZV section 2 no. 22, version of 2011 read in a copy; a tax commentary quotes the
#     version of 2023 with the same words. First on the road is meant, at home or abroad,
#     for which the first registration stands here
#   outcomes:
#   - met
#   - not met
#   - unproven
#   - not applicable
#   remedy: register the vehicle as an ordinary one until it is old enough
#   reviewed: 2026-11-25
#   since: 0.1.0
#   waivable: true
package regions.de.historic_age

import data.lib.judge

applies := judge.when("build.registration.plate_class", {"historic"})

findings contains judge.about(
	"registration.first_registered",
	judge.limit_min("figures.approval.age_since_registered", "limits.de.historic_age"),
)
