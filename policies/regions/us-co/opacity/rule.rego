# METADATA
# title: smoke of a diesel is within 40 % opacity
# description: >-
#   A diesel that smokes darker than 40 % over five seconds fails under the limit that
#   stood until 2025 and under the one adopted then. Whether 20 % is the limit already
#   is asked elsewhere: opacity_newer. One limit serves all engine years.
# related_resources:
# - ref: https://cdphe.colorado.gov/motor-vehicle-emissions/emissions-inspections-for-diesel-powered-vehicles
#   description: Colorado Department of Public Health and Environment on diesel inspections
# custom:
#   level: must
#   hold: inspection
#   basis: agency-guidance
#   source: >-
#     page of the Colorado Department of Public Health and Environment on diesel
#     inspections; heavier vehicles have lower limits for some ways of reading, which
#     are not applied here
#   needs_basis:
#     inspection: measured with evidence
#   outcomes:
#   - met
#   - not met
#   - unproven
#   - not applicable
#   remedy: have the injection set by a pump shop and the reading repeated
#   caution: >-
#     exhaust gas goes outdoors, and nobody stands in line with fan or belts while the
#     throttle is snapped
#   reviewed: 2026-11-25
#   since: 0.1.0
#   waivable: true
package regions["us-co"].opacity

import data.lib.judge

applies := judge.when("build.engine.fuel", {"diesel"})

findings contains judge.limit_max("build.engine.smoke_opacity", "limits.us_co.opacity_former")
