# METADATA
# title: the exhaust runs through a silencer
# description: >-
#   Every vehicle with a combustion engine has an exhaust system with a silencer, and no
#   gas leaves before it. A turbocharger is none. A vehicle without one may not be driven
#   to its test.
# related_resources:
# - ref: http://legislation.data.gov.uk/uksi/1986/1078/part/II/chapter/K/1995-02-01?wrap=true
#   description: Construction and Use Regulations 1986, reg. 54, read on 2026-11-25
# custom:
#   level: should
#   hold: road-test
#   basis: regulation
#   source: >-
#     Road Vehicles (Construction and Use) Regulations 1986, reg. 54(1), as in force on 1
#     February 1995; the text of today was not read. Compliance with one of the European
#     noise directives stands in its stead, reg. 54(3)
#   outcomes:
#   - met
#   - not met
#   - unproven
#   - not applicable
#   remedy: fit a silencer of the bore of the exhaust before the first drive
#   reviewed: 2026-11-25
#   since: 0.1.0
#   waivable: true
package regions.gb.silencer

import data.lib.judge

applies := judge.negate(judge.when("build.engine.fuel", {"electric"}))

findings contains judge.one_of("build.exhaust.muffler", {true})
