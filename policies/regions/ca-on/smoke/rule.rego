# METADATA
# title: the smoke limit that holds is known
# description: >-
#   Visible smoke is limited in time, and heavy commercial diesels in opacity by their
#   model year as well. The figures of the regulation in force were not read: the proposal
#   spoke of five seconds in a minute, and of 40 % opacity for 1990 and older; the middle
#   band is blank in what was read. That light vehicles are no longer called to a test is
#   no leave to smoke.
# related_resources:
# - ref: https://ero.ontario.ca/notice/019-0416
#   description: proposal of 2019
# - ref: https://www.ontario.ca/laws/regulation/R22183
#   description: O. Reg. 183/22, read on 2026-11-25
# custom:
#   level: note
#   hold: inspection
#   basis: second-hand
#   source: >-
#     proposal of 2019 on the environmental registry, and O. Reg. 183/22, which amended
#     and revoked its predecessor
#   outcomes:
#   - met
#   - unproven
#   - not applicable
#   remedy: >-
#     have the injection set before the inspection, and ask with gross weight and model
#     year
#   question:
#     ask: >-
#       Which limit of visible smoke, and which of opacity, holds for this vehicle under
#       O. Reg. 169/22?
#     office: Ontario Ministry of Transportation
#   reviewed: 2026-11-25
#   since: 0.1.0
#   waivable: true
package regions["ca-on"].smoke

import data.lib.judge

applies := judge.when("build.engine.fuel", {"diesel"})
