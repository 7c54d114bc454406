# METADATA
# title: the oil in the compressor suits the refrigerant
# description: >-
#   The compressor's oil is one that its refrigerant carries round: mineral oil for R-12, PAG
#   for R-134a and R-1234yf, ester for each where the compressor's maker allows it. The new
#   engine brings its own compressor; with the wrong oil it runs dry behind a full sight
#   glass.
# related_resources:
# - ref: https://myvehicle.help/BMW/1988/M5%20%28E28%29%20L6-3453cc%203.5L%20DOHC%20%28S38%29/Repair%20and%20Diagnosis/Maintenance/Fluids/Refrigerant/Description%20and%20Operation/Basic%20System%20Differences%3A%20R-12%20vs%20R-134a
#   description: workshop manual, R-12 against R-134a
# custom:
#   level: should
#   hold: install
#   basis: handbook
#   source: >-
#     workshop manuals: mineral oil with R-12, PAG with R-134a, never one for the other;
#     ester and R-1234yf from memory
#   outcomes:
#   - met
#   - not met
#   - unproven
#   - not applicable
#   remedy: >-
#     drain and flush the compressor, fill the kind and the amount that its maker names for
#     this refrigerant, and write both on a label
#   caution: >-
#     refrigerant blinds, freezes and displaces air: goggles, gloves, open doors and no
#     flame; only a certified technician recovers and charges it, as local law says
#   reviewed: 2026-11-25
#   since: 0.1.0
#   waivable: true
package rules.hvac.compressor_oil

import data.lib.judge

applies := judge.when("build.hvac.refrigerant_opened", {true})

_oils := {
	"r-12": {"mineral", "ester"},
	"r-134a": {"pag", "ester"},
	"r-1234yf": {"pag", "ester"},
}

findings contains judge.allowed("build.hvac.compressor_oil", "build.hvac.refrigerant", _oils)
