# METADATA
# title: Pennsylvania's questions have the authority's answer
# description: >-
#   No safety certificate is put on a vehicle that owes an emission inspection and has
#   not passed it, and one whose essential parts were substituted is titled by other
#   papers. How a changed engine stands in both is for the Department to say; every
#   question that this build raises has its answer on paper.
# related_resources:
# - ref: https://pacodeandbulletin.gov/Display/pabull?d=reduce&file=%2Fsecure%2Fpabulletin%2Fdata%2Fvol27%2F27-39%2F1582b.html
#   description: 67 Pa. Code 177.51 as adopted in 1997
# - ref: https://www.pacode.com/secure/data/067/chapter19/s19.2.html
#   description: 67 Pa. Code 19.2, reconstructed vehicle
# custom:
#   level: must
#   hold: plan
#   basis: regulation
#   source: 67 Pa. Code 177.51(c) as adopted in 1997; 19.2 and 19.3
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
package regions["us-pa"].questions_answered

import data.lib.judge

# Each question says itself when it is raised.
applies := judge.always
