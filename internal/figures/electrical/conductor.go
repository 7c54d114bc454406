package electrical

import (
	"trialfit/internal/figures"
	"trialfit/internal/quantity"
)

var conductorArea = &figures.Figure{
	ID:      "electrical.conductor_area",
	Title:   "copper in a circuit's conductor",
	Symbol:  "A",
	Kind:    quantity.Conductor,
	Unit:    "mm²",
	Per:     circuits,
	Formula: "section of the size: AWG by its diameter of 0.127 mm·92^((36 − n)/39), SAE by the least copper of SAE J1127 and J1128, 6 to 14 % less",
	Inputs:  []figures.Input{{Name: "A", Path: circuits + ".*.conductor", Direction: figures.Rising, Valid: conductorBounds}},
	Source: figures.Source{
		Title: "sections of AWG and SAE wire side by side",
		URL:   "https://sportsmensmarine.com/archives/1034",
		Basis: "standard",
	},
	Compute: func(a figures.Args) float64 { return a.At("A") },
}

// ConductorNeed is the section of copper in m² in which a current in A loses a
// voltage in V over a length in m, out and back, at a temperature in K.
func ConductorNeed(current, length, temperature, drop float64) float64 {
	return current * Resistance(1, length, 1, temperature) / drop
}

var conductorNeed = &figures.Figure{
	ID:     "electrical.conductor_need",
	Title:  "copper that a circuit needs for its drop",
	Symbol: "A min",
	Kind:   quantity.Conductor,
	Unit:   "mm²",
	Per:    circuits,
	Formula: "A min = I·ρ·ℓ·(1 + 0.00393·(ϑ − 20 °C))/(share·U), ρ = 17.241 nΩ·m, ℓ out and back, " +
		"share 3 % in a critical circuit and 10 % in an ordinary one",
	Inputs: with(circuitInputs[1:], circuitCurrent(figures.Rising), systemVoltage, dropAllowed),
	Source: recommended,
	Compute: func(a figures.Args) float64 {
		return ConductorNeed(a.At("I"), a.At("ℓ"), a.At("ϑ"), a.At("share")*a.At("U"))
	},
}
