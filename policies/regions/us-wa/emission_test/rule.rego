# METADATA
# title: the emission test, until 2019, has been passed
# description: >-
#   Washington tested vehicles in some counties until 31 December 2019 and has not since
#   1 January 2020. Not to be tested is not to be legal: altered emission controls and
#   smoking vehicles stay unlawful in every county.
# related_resources:
# - ref: https://ecology.wa.gov/Air-Climate/Air-quality/Vehicle-emissions/Emissions-check-ends
#   description: Washington Department of Ecology on the end of emission checks
# custom:
#   level: note
#   hold: inspection
#   basis: agency-guidance
#   source: page of the Washington Department of Ecology on the end of emission checks
#   outcomes:
#   - met
#   - unproven
#   - not applicable
#   remedy: >-
#     nothing is due since 2020; keep the paper of an earlier test with the vehicle
#   question:
#     ask: Was a test due for this vehicle, and was it passed?
#     office: Washington State Department of Ecology, air quality
#   reviewed: 2026-11-25
#   since: 0.1.0
#   waivable: true
package regions["us-wa"].emission_test

import data.lib.judge

applies := judge.negate(judge.from_day("2020-01-01"))
