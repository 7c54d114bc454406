# METADATA
# title: a signatory has accepted the engine change
# description: >-
#   Modifications are judged by the edition of the state's guide that is in force when they
#   are done. Whether this engine is among the listed simple ones or needs a signatory is
#   settled before the work, since not every signatory takes every code.
# related_resources:
# - ref: https://www.scribd.com/document/718909935/PTVH5189-STU-02895-Vehicle-Standards-Information-8-v10-WEB-FA-1
#   description: Vehicle Standards Information 8, October 2021, copy
# custom:
#   level: note
#   hold: plan
#   basis: agency-guidance
#   source: >-
#     Vehicle Standards Information 8 of October 2021, first page; the list of approved
#     modifications itself was not read
#   outcomes:
#   - met
#   - unproven
#   - not applicable
#   remedy: >-
#     take the data of both engines to a signatory and agree on the evidence for emissions
#     before buying
#   question:
#     ask: >-
#       Is this engine change among the listed modifications, and if not, which codes and
#       which emission evidence does the signatory want?
#     office: Victoria, signatory of the Vehicle Assessment Signatory Scheme
#   reviewed: 2026-11-25
#   since: 0.1.0
#   waivable: true
package regions["au-vic"].signatory_consulted

import data.lib.judge

applies := judge.when_differs("build.outgoing_engine.family", "build.engine.family")
