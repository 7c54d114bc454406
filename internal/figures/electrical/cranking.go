package electrical

import (
	"trialfit/internal/figures"
	"trialfit/internal/quantity"
)

// Cable is one cable of a loop: the section in m² and the length in m of each of
// the parallel conductors.
type Cable struct{ Area, Length, Parallel float64 }

// LoopResistance is that in Ω of cables in series at a temperature in K and of
// the contacts between them, in Ω. The battery's own is not in it.
func LoopResistance(cables []Cable, contacts, temperature float64) float64 {
	sum := contacts
	for _, c := range cables {
		sum += Resistance(c.Area, c.Length, c.Parallel, temperature)
	}
	return sum
}

const loopFormula = "Σ ρ·ℓ/(A·n)·(1 + 0.00393·(ϑ − 20 °C)) over the cables + contacts, ρ = 17.241 nΩ·m; solid copper, battery not included"

// loopInputs are the leaves of the loop; current and voltage come on top.
var loopInputs = []figures.Input{
	{Name: "A", Path: "electrical.cranking.cables.*.conductor", Direction: figures.Falling, Valid: conductorBounds, NonEmpty: true},
	{Name: "ℓ", Path: "electrical.cranking.cables.*.length", Direction: figures.Rising, Valid: lengthBounds},
	{Name: "n", Path: "electrical.cranking.cables.*.parallel", Direction: figures.Falling, Valid: parallelBounds},
	{Name: "contacts", Path: "electrical.cranking.contacts", Direction: figures.Rising, Valid: contactBounds},
	{Name: "ϑ", Path: "electrical.cranking.temperature", Direction: figures.Rising, Valid: temperatureBounds},
}

var crankingCurrent = figures.Input{Name: "I", Path: "electrical.cranking.current", Direction: figures.Rising, Valid: crankingBounds}

var systemVoltage = figures.Input{Name: "U", Path: "electrical.system_voltage", Direction: figures.Falling, Valid: voltageBounds}

var crankingLoopResistance = &figures.Figure{
	ID:      "electrical.cranking_loop_resistance",
	Title:   "resistance of the cranking loop",
	Symbol:  "R",
	Kind:    quantity.Resistance,
	Formula: "R = " + loopFormula,
	Inputs:  loopInputs,
	Source:  copper,
	Compute: loop,
}

var crankingDrop = &figures.Figure{
	ID:      "electrical.cranking_drop",
	Title:   "voltage drop of the cranking loop",
	Symbol:  "ΔU",
	Kind:    quantity.Voltage,
	Unit:    "V",
	Formula: "ΔU = I·R, R = " + loopFormula,
	Inputs:  with(loopInputs, crankingCurrent),
	Source:  copper,
	Compute: func(a figures.Args) float64 { return VoltageDrop(a.At("I"), loop(a)) },
}

var crankingDropShare = &figures.Figure{
	ID:      "electrical.cranking_drop_share",
	Title:   "voltage drop of the cranking loop against the system voltage",
	Symbol:  "ΔU/U",
	Kind:    quantity.Ratio,
	Unit:    "%",
	Formula: "ΔU/U = I·R/U, R = " + loopFormula,
	Inputs:  with(loopInputs, crankingCurrent, systemVoltage),
	Source:  copper,
	Compute: func(a figures.Args) float64 { return VoltageDrop(a.At("I"), loop(a)) / a.At("U") },
}

func loop(a figures.Args) float64 {
	lengths, parallel := a.Column("ℓ"), a.Column("n")
	var cables []Cable
	for i, area := range a.Column("A") {
		cables = append(cables, Cable{area, lengths[i], parallel[i]})
	}
	return LoopResistance(cables, a.At("contacts"), a.At("ϑ"))
}

// with is a list of inputs and more.
func with(inputs []figures.Input, more ...figures.Input) []figures.Input {
	return append(append([]figures.Input{}, inputs...), more...)
}
