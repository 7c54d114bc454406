# METADATA
# title: the exhaust runs through a muffler
# description: >-
#   A vehicle with a combustion engine has a muffler that cools and expels the gas without
#   excessive noise; no cutout, no parts taken out, no widened outlet.
# related_resources:
# - ref: https://revscene.net/forums/showpost.php?p=8924205&postcount=483
#   description: section 7.03 as quoted, read on 2026-11-25
# custom:
#   level: should
#   hold: road-test
#   basis: second-hand
#   source: >-
#     B.C. Reg. 26/58 section 7.03, consolidation of October 2018 as an owner quotes it in
#     full
#   outcomes:
#   - met
#   - not met
#   - unproven
#   - not applicable
#   remedy: fit a muffler of the bore of the exhaust before the first drive
#   reviewed: 2026-11-25
#   since: 0.1.0
#   waivable: true
package regions["ca-bc"].muffler

import data.lib.judge

applies := judge.negate(judge.when("build.engine.fuel", {"electric"}))

findings contains judge.one_of("build.exhaust.muffler", {true})
