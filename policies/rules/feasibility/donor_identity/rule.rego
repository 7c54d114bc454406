# METADATA
# title: the donor is the engine that its papers name
# description: >-
#   The number stamped on the engine is the one on the papers of the donor, and the emission
#   label on the engine is the one the build claims. An engine without papers is nobody's;
#   an engine without its label is of no year at all for whoever inspects it.
# custom:
#   level: should
#   hold: plan
#   basis: own-record
#   source: >-
#     engine plate, emission label and bill of sale, read side by side before money changes
#     hands
#   outcomes:
#   - met
#   - not met
#   - unproven
#   - not applicable
#   remedy: >-
#     read plate and label yourself and photograph them; leave the engine where they differ
#     and the seller can not explain it; none for the donor where the engine is new or a
#     shop that answers for it has rebuilt it
#   reviewed: 2026-11-25
#   since: 0.1.0
#   waivable: true
package rules.feasibility.donor_identity

import data.lib.judge

applies := judge.when_there("build.engine.donor")

findings contains judge.equals("build.engine.number", "build.engine.donor.number_on_papers")

findings contains _label if not judge.is_none("build.engine.certification.label")

# None: the build claims a label that the engine does not carry.
_label := judge.present_at("build.engine.donor.label", "plan") if {
	judge.is_none("build.engine.donor.label")
} else := judge.equals("build.engine.certification.label", "build.engine.donor.label")
