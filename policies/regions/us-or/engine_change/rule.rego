# METADATA
# title: the standard for the changed engine is known
# description: >-
#   By memory Oregon takes a vehicle of 1980 and older by the year of its new engine,
#   and from 1981 on by the chassis or the engine, whichever is newer, with the
#   equipment of that year. A newer engine would then raise what is asked of an old
#   chassis. The part of the rule that was read makes a test invalid where cap or
#   catalyst of a vehicle of 1975 or later is disconnected.
# related_resources:
# - ref: https://oregon.public.law/rules/oar_340-256-0380
#   description: OAR 340-256-0380, basic test
# custom:
#   level: note
#   hold: plan
#   basis: memory
#   source: >-
#     OAR 340-256-0380, of which the paragraphs on engine changes were not visible; its
#     (3)(a) was read
#   outcomes:
#   - met
#   - unproven
#   - not applicable
#   remedy: ask with the labels of both engines at hand, before buying the donor
#   question:
#     ask: >-
#       Which model year, standard and equipment is this vehicle tested by with this
#       engine, and what becomes of the catalyst of a petrol chassis?
#     office: Oregon Department of Environmental Quality, vehicle inspection
#   reviewed: 2026-11-25
#   since: 0.1.0
#   waivable: true
package regions["us-or"].engine_change

import data.lib.judge

applies := judge.all_of([
	judge.when_zone({"Clackamas", "Columbia", "Jackson", "Marion", "Multnomah", "Washington", "Yamhill"}),
	judge.when_min("build.chassis.model_year", "limits.us_or.tested_year"),
	judge.when_differs("build.outgoing_engine.family", "build.engine.family"),
])
