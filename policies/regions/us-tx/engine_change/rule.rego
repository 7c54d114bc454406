# METADATA
# title: the changed engine equals a certified vehicle as sold
# description: >-
#   Texas lets an engine be replaced only where its design was approved by the federal
#   agency, where every control that applies to it is installed and works, and where the
#   result equals, in emission parts, design and calibration, a vehicle of the same year
#   or newer as first sold. An older engine passes only if shown to be that carried-over
#   design. The rule holds in every county, tested or not.
# related_resources:
# - ref: http://texreg.sos.state.tx.us/public/readtac$ext.TacPage?sl=R&app=9&p_dir=&p_rloc=&p_tloc=&p_ploc=&pg=1&p_tac=&ti=30&pt=1&ch=114&rl=20
#   description: 30 TAC 114.20
# custom:
#   level: note
#   hold: plan
#   basis: regulation
#   source: 30 TAC 114.20(b)(1); the day of the copy was not seen
#   outcomes:
#   - met
#   - unproven
#   - not applicable
#   remedy: >-
#     name the production vehicle that the finished one will equal, and gather its
#     emission label and list of controls before buying the donor
#   question:
#     ask: >-
#       Which production vehicle of the chassis' model year or newer does the finished
#       vehicle equal in every emission part, and is that accepted for this engine?
#     office: Texas Commission on Environmental Quality
#   reviewed: 2026-11-25
#   since: 0.1.0
#   waivable: true
package regions["us-tx"].engine_change

import data.lib.judge

applies := judge.when_differs("build.outgoing_engine.family", "build.engine.family")
