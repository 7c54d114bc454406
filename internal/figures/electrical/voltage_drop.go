package electrical

import (
	"trialfit/internal/figures"
	"trialfit/internal/quantity"
)

const circuits = "electrical.circuits"

const circuitFormula = "ρ·ℓ/A·(1 + 0.00393·(ϑ − 20 °C)), ρ = 17.241 nΩ·m, ℓ out and back; solid copper, joints not included"

var circuitInputs = []figures.Input{
	{Name: "A", Path: circuits + ".*.conductor", Direction: figures.Falling, Valid: conductorBounds, Series: awgSizes},
	{Name: "ℓ", Path: circuits + ".*.length", Direction: figures.Rising, Valid: lengthBounds},
	{Name: "ϑ", Path: circuits + ".*.temperature", Direction: figures.Rising, Valid: temperatureBounds},
}

// circuitCurrent is the steady current of a circuit.
func circuitCurrent(d figures.Direction) figures.Input {
	return figures.Input{Name: "I", Path: circuits + ".*.current", Direction: d, Valid: currentBounds}
}

var circuitResistance = &figures.Figure{
	ID:      "electrical.circuit_resistance",
	Title:   "resistance of a circuit's conductors",
	Symbol:  "R",
	Kind:    quantity.Resistance,
	Unit:    "mΩ",
	Per:     circuits,
	Formula: "R = " + circuitFormula,
	Inputs:  circuitInputs,
	Source:  copper,
	Compute: conductors,
}

var voltageDrop = &figures.Figure{
	ID:      "electrical.voltage_drop",
	Title:   "voltage drop of a circuit",
	Symbol:  "ΔU",
	Kind:    quantity.Voltage,
	Unit:    "V",
	Per:     circuits,
	Formula: "ΔU = I·R, R = " + circuitFormula,
	Inputs:  with(circuitInputs, circuitCurrent(figures.Rising)),
	Source:  copper,
	Compute: func(a figures.Args) float64 { return VoltageDrop(a.At("I"), conductors(a)) },
}

var voltageDropShare = &figures.Figure{
	ID:      "electrical.voltage_drop_share",
	Title:   "voltage drop of a circuit against the system voltage",
	Symbol:  "ΔU/U",
	Kind:    quantity.Ratio,
	Unit:    "%",
	Per:     circuits,
	Formula: "ΔU/U = I·R/U, R = " + circuitFormula,
	Inputs:  with(circuitInputs, circuitCurrent(figures.Rising), systemVoltage),
	Source:  copper,
	Compute: func(a figures.Args) float64 { return VoltageDrop(a.At("I"), conductors(a)) / a.At("U") },
}

// VoltageDrop is what a current in A loses over a resistance in Ω, in V.
func VoltageDrop(current, resistance float64) float64 { return current * resistance }

func conductors(a figures.Args) float64 { return Resistance(a.At("A"), a.At("ℓ"), 1, a.At("ϑ")) }
