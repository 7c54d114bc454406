# METADATA
# title: the modification codes of the swap are named
# description: >-
#   Section LA tells an equivalent engine (LA1) from a performance engine (LA2), added
#   charging (LA3) and engine modifications (LA4). The bound between the first two is
#   reported as about 20 %, of what is not clear. Gearbox, rear axle, brakes, tank and
#   suspension have codes of their own, and each needs somebody who may sign it; a code
#   forgotten is a second inspection.
# related_resources:
# - ref: https://www.tmr.qld.gov.au/business-industry/Accreditations/Approved-Person-Scheme/Vehicle-modification-codes
#   description: list of modification codes, Queensland
# - ref: https://www.lextreme.com/forums/index.php?threads/ncop-regs-australia.10441/
#   description: an owner on LA1 and LA2
# custom:
#   level: note
#   hold: plan
#   basis: second-hand
#   source: >-
#     list of modification codes of the Queensland department, read; the 20 % from a forum,
#     of power, capacity or ratio not resolved
#   outcomes:
#   - met
#   - unproven
#   - not applicable
#   remedy: list every change beside the engine and let the engineer name the codes
#   question:
#     ask: >-
#       Is this engine LA1 or LA2, by which quantity is that decided, and which further
#       codes do gearbox, axle, brakes, tank and suspension of this build need?
#     office: registration authority of the state, and the engineer it recognises
#   reviewed: 2026-11-25
#   since: 0.1.0
#   waivable: true
package regions.au.modification_codes

import data.lib.judge

applies := judge.when_differs("build.outgoing_engine.family", "build.engine.family")
