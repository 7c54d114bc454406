# METADATA
# title: welds on a rail keep to its web
# description: >-
#   What is welded to a frame rail is welded to its web, and ends three quarters of an inch
#   before either flange. The flanges carry the bending: a bead across one is where the rail
#   cracks, and no patch over it holds.
# related_resources:
# - ref: https://gm.saturn.team/Chevrolet/Astro___4WD/1998/5/9/501/47396
#   description: workshop manual of a van with a frame, welding of accessories
# - ref: https://gm.saturn.team/GMC_Truck/Savana/2000/10/9/977/47396
#   description: the same of a larger van
# custom:
#   level: should
#   hold: install
#   basis: handbook
#   source: >-
#     workshop manuals of one maker, read as excerpts on 2026-11-27: accessories are not
#     welded across the flanges nor within 19 mm of one
#   outcomes:
#   - met
#   - not met
#   - unproven
#   - not applicable
#   remedy: >-
#     bolt the bracket instead, or have the rail looked at by somebody licensed to repair
#     frames before the weld is ground away
#   caution: >-
#     disconnect batteries and control units before welding; drilling and welding of frames
#     is restricted by their makers and, in places, by law
#   reviewed: 2026-11-27
#   since: 0.1.0
#   waivable: true
package rules.frame.welds_clear_of_flange

import data.lib.judge

applies := judge.when_listed("build.frame.welds")

findings contains _finding(id) if some id in judge.each("build.frame.welds")

# A part welded off the vehicle is welded to no rail.
_finding(id) := judge.unasked(_place(id)) if {
	judge.holds(judge.of(id, "build.frame.welds.*.tank"), "off-vehicle")
} else := judge.limit_min(judge.of(id, "build.frame.welds.*.edge"), "limits.frame.weld_to_flange") if {
	judge.holds(_place(id), "web")
} else := judge.one_of(_place(id), {"web", "elsewhere"})

_place(id) := judge.of(id, "build.frame.welds.*.place")
