# METADATA
# title: a plated goods vehicle is notified and plated anew
# description: >-
#   Above 3,500 kg of gross rating a goods vehicle has a plating certificate; a change of
#   engine or of mass is a notifiable alteration and may need a new plate before the
#   vehicle is loaded.
# custom:
#   level: note
#   hold: inspection
#   basis: memory
#   source: form VTG10 and its scope from memory
#   outcomes:
#   - met
#   - unproven
#   - not applicable
#   remedy: >-
#     notify before the alteration is used on the road, with the axle loads from the
#     weighbridge
#   question:
#     ask: >-
#       Is this change of engine a notifiable alteration for this goods vehicle, and does
#       it need a new plate?
#     office: Driver and Vehicle Standards Agency
#   reviewed: 2026-11-25
#   since: 0.1.0
#   waivable: true
package regions.gb.goods_plate

import data.lib.judge

applies := judge.all_of([
	judge.when("build.chassis.category", {"truck", "light-truck", "van"}),
	judge.negate(judge.when_max("build.chassis.ratings.gross", "limits.gb.goods_gross")),
])
