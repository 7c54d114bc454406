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

// allowed is the share of the system voltage that a circuit may lose, as the
// American Boat and Yacht Council recommends it.
var allowed = map[string]float64{"critical": 0.03, "ordinary": 0.10}

var dropAllowed = figures.Input{Name: "share", Path: circuits + ".*.drop", Choices: allowed}

var recommended = figures.Source{
	Title: "ABYC: 3 % where the drop must be kept to a minimum, 10 % where it is not critical",
	URL:   "https://marincofaq.wordpress.com/category/appendix/wire-charts/",
	Basis: "standard",
}

var voltageDropUse = &figures.Figure{
	ID:      "electrical.voltage_drop_use",
	Title:   "voltage drop of a circuit against what it may lose",
	Symbol:  "ΔU/ΔU max",
	Kind:    quantity.Ratio,
	Unit:    "%",
	Per:     circuits,
	Formula: "I·R/(share·U), share 3 % in a critical circuit and 10 % in an ordinary one, R = " + circuitFormula,
	Inputs:  with(circuitInputs, circuitCurrent(figures.Rising), systemVoltage, dropAllowed),
	Source:  recommended,
	Compute: func(a figures.Args) float64 {
		return VoltageDrop(a.At("I"), conductors(a)) / (a.At("share") * a.At("U"))
	},
}

// VoltageDrop is what a current in A loses over a resistance in Ω, in V.
func VoltageDrop(current, resistance float64) float64 { return current * resistance }

func conductors(a figures.Args) float64 { return Resistance(a.At("A"), a.At("ℓ"), 1, a.At("ϑ")) }
