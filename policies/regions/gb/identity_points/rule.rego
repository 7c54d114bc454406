# METADATA
# title: enough of the vehicle is kept for its identity
# description: >-
#   A vehicle keeps its registration with eight points or more, five of which come from a
#   frame or load-bearing body that was not altered. The engine's one point is gone with
#   the engine; gearbox, axles, suspension and steering cost two each. A crossmember that
#   is cut or moved costs the five. Below, the vehicle is approved anew and gets a Q
#   number, worth a fraction.
# related_resources:
# - ref: http://www.direct.gov.uk/en/Motoring/BuyingAndSellingAVehicle/RegisteringAVehicle/DG_10014199
#   description: archived government page on radically altered vehicles, read on 2026-11-25
# - ref: http://www.nidirect.gov.uk/index/motoring/buying-and-selling-a-vehicle/registering-a-vehicle/registering-a-radically-altered-vehicle.htm
#   description: the points, archived page, read on 2026-11-25
# custom:
#   level: should
#   hold: plan
#   basis: agency-guidance
#   source: >-
#     archived pages of the British and the Northern Irish registration offices on
#     radically altered vehicles; five points from the chassis as a club forum quotes a
#     later page. Guidance said to be revised in August 2025 was not found
#   outcomes:
#   - met
#   - not met
#   - unproven
#   reasons:
#     altered: >-
#       the frame or load-bearing body is cut or altered, and its five points are gone
#   remedy: >-
#     mount the engine with brackets bolted to holes the frame already has; keep gearbox,
#     axles or steering; photograph the frame before and after
#   reviewed: 2026-11-25
#   since: 0.1.0
#   waivable: true
package regions.gb.identity_points

import data.lib.judge

findings contains judge.about("chassis.kept", judge.limit_min("figures.approval.identity_points", "limits.gb.identity_points"))

findings contains judge.because("altered", judge.one_of("build.chassis.kept.frame", {true}))
