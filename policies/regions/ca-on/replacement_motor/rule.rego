# METADATA
# title: a motor replaced under the old rule was as clean
# description: >-
#   Not in force: until the end of 2019 a motor put in since 1999 had to be designed to
#   standards at least as stringent as the original, with its emission equipment. The
#   regulation was revoked on 1 January 2020, its successor on 1 July 2022; what holds now
#   is asked elsewhere. An old certificate under it proves nothing today.
# related_resources:
# - ref: https://www.ontario.ca/laws/regulation/980361
#   description: O. Reg. 361/98, note of its revocation read on 2026-11-25
# - ref: https://www.ontario.ca/laws/regulation/190457
#   description: O. Reg. 457/19, its successor, revoked
# custom:
#   level: should
#   hold: plan
#   basis: second-hand
#   source: >-
#     O. Reg. 361/98 section 4(2) as a forum quotes it; its revocation read on the
#     official page. The model year stands here for the standard
#   outcomes:
#   - met
#   - not met
#   - unproven
#   - not applicable
#   remedy: judge the vehicle by the regulation in force
#   reviewed: 2026-11-25
#   since: 0.1.0
#   waivable: true
package regions["ca-on"].replacement_motor

import data.lib.judge

applies := judge.all_of([
	judge.negate(judge.from_day("2020-01-01")),
	judge.when_since("build.engine.date", "1999-01-01"),
])

findings contains judge.limit_min("build.engine.model_year", "build.chassis.model_year")
