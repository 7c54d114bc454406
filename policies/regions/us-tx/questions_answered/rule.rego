# METADATA
# title: Texas' questions have the authority's answer
# description: >-
#   Who runs an engine fitted with an emission system keeps it working and may not
#   remove it, except to fit one as effective. Whether an engine change does that is for
#   the state to say; every question that this build raises has its answer on paper.
# related_resources:
# - ref: https://legiscan.com/TX/text/SB892/2019
#   description: Transportation Code 547.605(c) as quoted in a bill of 2019
# - ref: http://texreg.sos.state.tx.us/public/readtac$ext.TacPage?sl=R&app=9&p_dir=&p_rloc=&p_tloc=&p_ploc=&pg=1&p_tac=&ti=30&pt=1&ch=114&rl=20
#   description: 30 TAC 114.20
# custom:
#   level: must
#   hold: plan
#   basis: statute
#   source: >-
#     Transportation Code 547.605(c), read in the text that a bill of 2019 quotes; 30
#     TAC 114.20
#   outcomes:
#   - met
#   - unproven
#   - not applicable
#   remedy: >-
#     ask the office named with each question and put its answer with the evidence, kind
#     authority-answer
#   collects: questions
#   reviewed: 2026-11-25
#   since: 0.1.0
#   waivable: false
package regions["us-tx"].questions_answered

import data.lib.judge

# Each question says itself when it is raised.
applies := judge.always
