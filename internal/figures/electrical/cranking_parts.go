package electrical

import (
	"trialfit/internal/figures"
	"trialfit/internal/quantity"
)

// Where the voltage of the cranking loop is lost: cable by cable, and in the
// contacts. Together they are the drop of the loop.

const cables = "electrical.cranking.cables"

var crankingCableDrop = &figures.Figure{
	ID:      "electrical.cranking_cable_drop",
	Title:   "voltage drop of a cable of the cranking loop",
	Symbol:  "ΔU",
	Kind:    quantity.Voltage,
	Unit:    "V",
	Per:     cables,
	Formula: "ΔU = I·ρ·ℓ/(A·n)·(1 + 0.00393·(ϑ − 20 °C)), ρ = 17.241 nΩ·m; solid copper",
	Inputs: []figures.Input{
		{Name: "A", Path: cables + ".*.conductor", Direction: figures.Falling, Valid: conductorBounds, Series: awgSizes},
		{Name: "ℓ", Path: cables + ".*.length", Direction: figures.Rising, Valid: lengthBounds},
		{Name: "n", Path: cables + ".*.parallel", Direction: figures.Falling, Valid: parallelBounds},
		{Name: "ϑ", Path: "electrical.cranking.temperature", Direction: figures.Rising, Valid: temperatureBounds},
		crankingCurrent,
	},
	Source: copper,
	Compute: func(a figures.Args) float64 {
		return VoltageDrop(a.At("I"), Resistance(a.At("A"), a.At("ℓ"), a.At("n"), a.At("ϑ")))
	},
}

var crankingContactDrop = &figures.Figure{
	ID:      "electrical.cranking_contact_drop",
	Title:   "voltage drop of the contacts of the cranking loop",
	Symbol:  "ΔU",
	Kind:    quantity.Voltage,
	Unit:    "V",
	Formula: "ΔU = I·R, R the joints, switch and solenoid contacts together",
	Inputs: []figures.Input{
		{Name: "R", Path: "electrical.cranking.contacts", Direction: figures.Rising, Valid: contactBounds},
		crankingCurrent,
	},
	Source:  figures.Source{Title: "Ohm's law", Basis: "physics"},
	Compute: func(a figures.Args) float64 { return VoltageDrop(a.At("I"), a.At("R")) },
}
