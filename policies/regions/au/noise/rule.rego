# METADATA
# title: the stationary noise has a limit and meets it
# description: >-
#   A model approved to design rule 83/00 has a stationary level recorded for it, and the
#   limit lies some dB(A) above that; older models have a limit by category and date. The
#   rule began with new petrol models in January 2005. The recorded level is that of the
#   engine that comes out, which a diesel seldom keeps. Victoria has rules of its own.
# related_resources:
# - ref: http://www.legislation.nsw.gov.au/fragview/inforce/subordleg+40+2008+pt.2-div.1-sdiv.2+0+N?fragid=6
#   description: New South Wales, noise at sale, historic
# - ref: https://www.infrastructure.gov.au/infrastructure-transport-vehicles/vehicles/vehicle-safety-environment/vehicle-noise
#   description: the department on vehicle noise
# custom:
#   level: note
#   hold: inspection
#   basis: second-hand
#   source: >-
#     reference notes: New South Wales regulation of 2008 on sale, level of the model plus 5
#     dB(A), with the greater of that and a scheduled figure where the compliance plate is
#     of 1 September 2011 or before; a historic text. ADR 83/00 sets no stationary limit
#     itself
#   outcomes:
#   - met
#   - unproven
#   - not applicable
#   remedy: have the level measured by the stationary method before the vehicle is shown
#   question:
#     ask: >-
#       Which stationary limit applies to this vehicle by category and build date, by which
#       method is it measured, and is it met?
#     office: registration authority of the state, and the engineer it recognises
#   reviewed: 2026-11-25
#   since: 0.1.0
#   waivable: true
package regions.au.noise

import data.lib.judge

applies := judge.all_of([
	judge.when_differs("build.outgoing_engine.family", "build.engine.family"),
	judge.negate(judge.in_region({"AU-VIC"})),
])
