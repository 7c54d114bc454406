# METADATA
# title: the way to an operating permit is agreed
# description: >-
#   The operating permit lapses with a change that alters the approved type, is likely to
#   endanger others or worsens exhaust or noise. With a Teilegutachten that covers this
#   engine in this vehicle an inspection without delay keeps it; without one, or outside
#   its scope, an expert's report leads to a new permit for the single vehicle. What the
#   expert will ask for in proof of exhaust, noise, brakes and strength decides whether
#   the swap is affordable at all.
# related_resources:
# - ref: https://github.com/bundestag/gesetze/blob/master/s/stvzo_2012/index.md
#   description: StVZO, copy of the consolidated text, read on 2026-11-25
# - ref: http://www.simsonforum.de/wbb/thread/99100-simson-s50-s51-mischform-was-f%C3%BCr-papiere-eintragen/?action=lastPost
#   description: the example catalogue of 1999 as a forum quotes it
# custom:
#   level: note
#   hold: plan
#   basis: regulation
#   source: >-
#     StVZO section 19(2) sentence 2, 19(3) nos. 1 to 4 and 21, read in a copy of the
#     consolidated text of about 2013; that an engine of another kind is the case without
#     delay or with report, as item 8.2 of the example catalogue of 1999 has it,
#     second-hand
#   outcomes:
#   - met
#   - unproven
#   - not applicable
#   remedy: >-
#     take data sheets of both engines to the expert before buying; the drive to the
#     report is allowed on the old plates, other drives without a permit are not
#   question:
#     ask: >-
#       Is there a Teilegutachten for this engine in this vehicle, or does the change need
#       a report for a new operating permit, and which proofs of exhaust, noise, brakes
#       and strength will be asked for?
#     office: officially recognised expert of the technical inspection body
#   reviewed: 2026-11-25
#   since: 0.1.0
#   waivable: true
package regions.de.operating_permit

import data.lib.judge

applies := judge.any_of([
	judge.when_differs("build.outgoing_engine.family", "build.engine.family"),
	judge.when_differs("build.registration.title_fuel", "build.engine.fuel"),
])
