# METADATA
# title: a heavy engine from abroad may come in
# description: >-
#   Heavy-duty engines are regulated by themselves, not only in vehicles, once made in
#   Canada or imported since 2004. An engine made in Canada as a replacement needs no mark
#   of its own where it is of the model year of the original and the same in everything
#   that touches emissions; another engine is not such a replacement.
# related_resources:
# - ref: https://laws-lois.justice.gc.ca/eng/regulations/SOR-2003-2/
#   description: On-Road Vehicle and Engine Emission Regulations, consolidation of June 2019, read in a copy on 2026-11-25
# custom:
#   level: note
#   hold: plan
#   basis: regulation
#   source: >-
#     SOR/2003-2 sections 3, 6(2) and 6(4)(c), consolidation of June 2019; what an
#     imported engine has to bear was not read
#   outcomes:
#   - met
#   - unproven
#   - not applicable
#   remedy: >-
#     buy an engine that is in the country already, with the mark and label on it, or ask
#     before it is shipped
#   question:
#     ask: >-
#       Does this engine need a national emissions mark or an import declaration, and does
#       it bear it?
#     office: Environment and Climate Change Canada, transportation division
#   reviewed: 2026-11-25
#   since: 0.1.0
#   waivable: true
package regions.ca.heavy_engine

import data.lib.judge

applies := judge.all_of([
	judge.any_of([
		judge.when("build.chassis.certification.class", {"heavy-duty"}),
		judge.when("build.engine.certification.class", {"heavy-duty"}),
	]),
	judge.any_of([
		judge.when_differs("build.outgoing_engine.family", "build.engine.family"),
		judge.when_differs("build.chassis.model_year", "build.engine.model_year"),
	]),
])
