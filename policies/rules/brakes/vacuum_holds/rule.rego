# METADATA
# title: the brake vacuum holds with the engine stopped
# description: >-
#   With the engine stopped and the foot off the pedal the vacuum falls by no more than
#   3.4 kPa in 15 s. A check valve put in backwards or left out shows nothing while the
#   engine runs, and nothing is left when it stops.
# related_resources:
# - ref: https://lemon-manuals.org.ua/Mazda/2002/626%20ES%2C%20Automatic/Repair%20and%20Diagnosis/Brakes/Anti-Lock%2FTraction%20Control%20System/Power%20Brake%20Unit%20Inspection/Checking%20For%20Vacuum%20Loss
#   description: loss of vacuum in a service manual
# custom:
#   level: should
#   hold: road-test
#   basis: handbook
#   source: >-
#     one car maker's service manual: no more than 3.4 kPa lost in 15 s from 66.7 kPa
#   needs_basis:
#     road-test: measured
#   outcomes:
#   - met
#   - not met
#   - unproven
#   - not applicable
#   remedy: >-
#     find the leak from the check valve on, turn or renew the valve, and time it again
#   caution: >-
#     brakes are worked on and proved by who is trained for it, where local law asks for
#     it; nobody drives on an unproved brake beyond walking pace on closed ground
#   reviewed: 2026-11-25
#   since: 0.1.0
#   waivable: false
package rules.brakes.vacuum_holds

import data.lib.judge

applies := judge.when("build.hydraulics.brakes.assist", {"vacuum"})

findings contains judge.limit_max("build.vacuum.leak", "limits.brakes.vacuum_leak")
