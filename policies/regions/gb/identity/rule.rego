# METADATA
# title: the office lets the vehicle keep its identity
# description: >-
#   More than the engine is changed, or the frame is welded. By the guidance read here
#   points decide; that of August 2025 is said to let like-for-like repairs and some
#   modifications keep the identity and was not read. Which one the office goes by, and
#   what it makes of a bracket welded to the frame, is worth a letter before the frame is
#   touched.
# custom:
#   level: note
#   hold: plan
#   basis: second-hand
#   source: >-
#     the call for evidence of 2024 is reported at
#     https://deltacharlie.com/govt-launches-survey-on-future-of-classic-vehicles; its
#     outcome from memory
#   outcomes:
#   - met
#   - unproven
#   - not applicable
#   remedy: send drawings and photographs of the planned mounts with the question
#   question:
#     ask: >-
#       With this engine, these mounts and these other components changed, does the
#       vehicle keep its registration number and date, and does a bracket welded to the
#       frame count as altering it?
#     office: Driver and Vehicle Licensing Agency
#   reviewed: 2026-11-25
#   since: 0.1.0
#   waivable: true
package regions.gb.identity

import data.lib.judge

applies := judge.any_of([
	judge.when("build.chassis.kept.frame", {false}),
	judge.when("build.chassis.kept.suspension", {false}),
	judge.when("build.chassis.kept.axles", {false}),
	judge.when("build.chassis.kept.transmission", {false}),
	judge.when("build.chassis.kept.steering", {false}),
	judge.when_listed("build.frame.welds"),
])
