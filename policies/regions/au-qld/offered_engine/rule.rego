# METADATA
# title: an engine that the line was offered with is minor
# description: >-
#   The booklet lets some minor modifications be done without an approved person, and speaks
#   of replacement engines that were offered in its first section; the sentence was cut off
#   in the copy. It is not taken as a permission.
# related_resources:
# - ref: https://documents.pub/document/pdf-modification-motor-vehicles2.html
#   description: Queensland Transport, booklet on modifications, 2008, copy
# custom:
#   level: note
#   hold: plan
#   basis: second-hand
#   source: >-
#     booklet of 2008, section 1, replacement engines; read up to the condition that was cut
#     off
#   outcomes:
#   - met
#   - unproven
#   - not applicable
#   remedy: ask which brakes, axle and emission parts have to come along with that engine
#   question:
#     ask: >-
#       Is this engine, which the maker offered in this line, a minor modification, and
#       under which conditions?
#     office: Queensland approved person, Department of Transport and Main Roads
#   reviewed: 2026-11-25
#   since: 0.1.0
#   waivable: true
package regions["au-qld"].offered_engine

import data.lib.judge

applies := judge.all_of([
	judge.when_differs("build.outgoing_engine.family", "build.engine.family"),
	judge.any_of([judge.negate(judge.when_differs(
		"build.engine.family",
		judge.of(id, "build.chassis.engine_options.*.family"),
	)) |
		some id in judge.each("build.chassis.engine_options")
	]),
])
