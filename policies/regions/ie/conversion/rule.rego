# METADATA
# title: it is known whether the swap is a declared conversion
# description: >-
#   A conversion is declared to Revenue with the certificate of a qualified individual,
#   before tax is taken out. One source calls any change of the registered particulars a
#   conversion; county offices quote a definition by which only a vehicle that leaves its
#   certified category is one, and list seats, bodywork and category but no engine.
#   Undeclared tax is collected with interest.
# related_resources:
# - ref: http://www.mayococo.ie/en/Services/MotorTax/RevisedProceduresforConversionofVehicles/
#   description: Mayo County Council on conversions, read on 2026-11-25
# - ref: https://meath.ie/node/609
#   description: Meath County Council on conversions, read on 2026-11-25
# - ref: https://vrt.ie/faq/vehicle-conversion-modifications
#   description: a private page with the wider reading
# custom:
#   level: note
#   hold: plan
#   basis: agency-guidance
#   source: >-
#     pages of Mayo and Meath county councils, undated; against them a club page on
#     section 130 of the Finance Act 1992. The section as it stands was not read
#   outcomes:
#   - met
#   - unproven
#   - not applicable
#   remedy: >-
#     ask in writing before the work; where a declaration is due, find the qualified
#     individual first
#   question:
#     ask: >-
#       Is this change of engine and fuel a conversion to be declared, and does it change
#       registration tax?
#     office: Revenue Commissioners, central vehicle office
#   reviewed: 2026-11-25
#   since: 0.1.0
#   waivable: true
package regions.ie.conversion

import data.lib.judge

applies := judge.any_of([
	judge.when_differs("build.outgoing_engine.family", "build.engine.family"),
	judge.when_differs("build.registration.title_fuel", "build.engine.fuel"),
])
