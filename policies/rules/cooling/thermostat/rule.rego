# METADATA
# title: a thermostat keeps the engine warm
# description: >-
#   A thermostat is fitted, and it opens no lower than road engines are made for. Left out,
#   or a cool one put in to cure overheating, the engine never warms up: cylinders wear and
#   glaze, a diesel smokes white and the heater stays cold. It cures nothing, since at full
#   load any thermostat is open.
# custom:
#   level: should
#   hold: install
#   basis: memory
#   source: >-
#     from memory: thermostats of road engines start to open at 76 to 92 °C; the engine
#     maker's own figure comes first
#   outcomes:
#   - met
#   - not met
#   - unproven
#   - not applicable
#   reasons:
#     no-thermostat: >-
#       there is no thermostat, and the engine runs cold
#   remedy: >-
#     fit the thermostat that the engine's maker names, with its bypass as he drew it, and
#     look for the cause of overheating elsewhere
#   caution: >-
#     let the engine cool and lose its pressure before cap or hose is opened; coolant scalds
#   reviewed: 2026-11-25
#   since: 0.1.0
#   waivable: true
package rules.cooling.thermostat

import data.lib.judge

applies := judge.when_there("build.cooling")

findings contains judge.because(
	"no-thermostat",
	judge.present_at("build.cooling.thermostat", "install"),
) if {
	judge.is_none("build.cooling.thermostat")
}

findings contains judge.limit_min("build.cooling.thermostat", "limits.cooling.thermostat") if {
	not judge.is_none("build.cooling.thermostat")
}
