# METADATA
# title: the intake is no tighter than the engine bears
# description: >-
#   At full load and governed speed a gauge behind the air cleaner shows no more than the
#   engine's maker allows. Above it a diesel smokes, its turbine runs hot and the compressor
#   draws oil past its seal; and a clean element must leave room for its dirt.
# custom:
#   level: must
#   hold: road-test
#   basis: manufacturer
#   source: >-
#     highest intake restriction from the engine maker's data sheet
#   needs_basis:
#     road-test: measured
#   outcomes:
#   - met
#   - not met
#   - unproven
#   - not applicable
#   remedy: >-
#     fit a larger air cleaner or pipe, wider bends or a freer snorkel, and measure again
#   caution: >-
#     keep hands and rags away from an open intake; an engine draws in what comes near and a
#     diesel may not stop
#   reviewed: 2026-11-25
#   since: 0.1.0
#   waivable: true
package rules.air.restriction

import data.lib.judge

applies := judge.all_of([
	judge.when("build.engine.fuel", {"diesel"}),
	judge.when_there("build.intake.restriction_limit"),
])

findings contains judge.about(
	"intake.restriction",
	judge.limit_max("build.intake.restriction", "build.intake.restriction_limit"),
)
