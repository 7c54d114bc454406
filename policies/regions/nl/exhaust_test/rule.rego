# METADATA
# title: the exhaust test after the change is known
# description: >-
#   The periodic inspection follows the European directive; which date, stage and plate it
#   goes by after a change of engine is entered by the approval, and a newer or older
#   engine can move it.
# custom:
#   level: note
#   hold: inspection
#   basis: memory
#   source: Directive 2014/45/EU, from memory; Dutch text not read
#   outcomes:
#   - met
#   - unproven
#   - not applicable
#   remedy: >-
#     have date, stage and coefficient entered with the approval, and bring the print-out
#   question:
#     ask: >-
#       Which exhaust test and limits does this vehicle take in the periodic inspection
#       with this engine?
#     office: RDW, the vehicle authority
#   reviewed: 2026-11-25
#   since: 0.1.0
#   waivable: true
package regions.nl.exhaust_test

import data.lib.judge

applies := judge.when("build.engine.fuel", {"diesel", "petrol", "lpg", "cng"})
