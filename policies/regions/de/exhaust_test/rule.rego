# METADATA
# title: the exhaust test is known and passed
# description: >-
#   The periodic inspection holds a diesel to the coefficient entered for it, else to
#   general limits, and the latest ones to a count of particles as well. Which value is
#   entered after the swap is settled with the report, not at the test.
# custom:
#   level: note
#   hold: inspection
#   basis: memory
#   source: from memory; the particle count for the sixth stage since July 2023 too
#   outcomes:
#   - met
#   - unproven
#   - not applicable
#   remedy: have the coefficient of the new engine entered, and bring its print-out
#   question:
#     ask: >-
#       Which exhaust test and which values hold for this vehicle with this engine, and
#       has it been passed?
#     office: engineer of a recognised inspection body
#   reviewed: 2026-11-25
#   since: 0.1.0
#   waivable: true
package regions.de.exhaust_test

import data.lib.judge

applies := judge.when("build.engine.fuel", {"diesel", "petrol", "lpg", "cng"})
