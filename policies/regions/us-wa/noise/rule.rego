# METADATA
# title: the exhaust is no louder than the original muffler
# description: >-
#   The exhaust of a vehicle is said not to be modified so that it is louder than with
#   the muffler first installed, with an exception for vehicles of 25 years and more. A
#   diesel with a 4 in pipe is heard.
# custom:
#   level: note
#   hold: install
#   basis: second-hand
#   source: >-
#     RCW 46.37.390(3), quoted in an owners' forum in 2013; whether and how it is
#     measured was not read
#   outcomes:
#   - met
#   - unproven
#   - not applicable
#   remedy: >-
#     keep the muffler of the maker where the engine allows, or have the level measured
#     before the exhaust is finished
#   question:
#     ask: >-
#       What noise may this vehicle make with its new engine and exhaust, and who
#       measures it?
#     office: Washington State Patrol, equipment and standards
#   reviewed: 2026-11-25
#   since: 0.1.0
#   waivable: true
package regions["us-wa"].noise

import data.lib.judge

applies := judge.when_differs("build.outgoing_engine.family", "build.engine.family")
