# METADATA
# title: the change is accepted and entered
# description: >-
#   After the work the installation is inspected without delay, or the report is made and
#   the approval authority gives the new permit. Until then the vehicle may only be driven
#   for that purpose.
# related_resources:
# - ref: https://github.com/bundestag/gesetze/blob/master/s/stvzo_2012/index.md
#   description: StVZO, copy of the consolidated text, read on 2026-11-25
# custom:
#   level: note
#   hold: inspection
#   basis: regulation
#   source: >-
#     StVZO section 19(3) no. 4 c, 19(4), 19(5) and 21, read in a copy of the consolidated
#     text of about 2013
#   outcomes:
#   - met
#   - unproven
#   - not applicable
#   remedy: >-
#     put the confirmation or the new permit with the evidence, and carry it in the
#     vehicle until the registration paper bears the entry
#   question:
#     ask: >-
#       Is the installation confirmed, or the new operating permit given, and is it to be
#       carried or entered?
#     office: officially recognised expert of the technical inspection body
#   reviewed: 2026-11-25
#   since: 0.1.0
#   waivable: true
package regions.de.acceptance

import data.lib.judge

applies := judge.any_of([
	judge.when_differs("build.outgoing_engine.family", "build.engine.family"),
	judge.when_differs("build.registration.title_fuel", "build.engine.fuel"),
])
