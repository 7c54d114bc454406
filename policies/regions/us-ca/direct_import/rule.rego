# METADATA
# title: an imported chassis has its certificate of conformance
# description: >-
#   A used vehicle of model year 1975 or later that was not made for the United States is
#   registered only with a certificate of conformance from the state board.
# related_resources:
# - ref: http://statutes.laws-info.com/california/hsc/44200-44210
#   description: Health and Safety Code 44200 to 44210
# custom:
#   level: note
#   hold: plan
#   basis: statute
#   source: Health and Safety Code 44200 and 44202; the exception of 44210 was not read
#   outcomes:
#   - met
#   - unproven
#   - not applicable
#   remedy: ask a laboratory licensed by the state board before buying the chassis
#   question:
#     ask: >-
#       Has this imported chassis a certificate of conformance, and does it hold with
#       another engine?
#     office: California Air Resources Board
#   reviewed: 2026-11-25
#   since: 0.1.0
#   waivable: true
package regions["us-ca"].direct_import

import data.lib.judge

applies := judge.all_of([
	judge.when("build.chassis.certification.certified_for", {"other", "none"}),
	judge.when_min("build.chassis.model_year", "limits.us_ca.direct_import_year"),
])
