package exhaust

import (
	"trialfit/internal/figures"
	"trialfit/internal/figures/air"
	"trialfit/internal/figures/fluid"
	"trialfit/internal/quantity"
)

const segments = "exhaust.segments"

// Bends are kinds of bend as straight pipe, in bores for each.
var Bends = map[string]float64{
	"straight": 0, "elbow-45": 15, "long-90": 20, "short-90": 33, "square-90": 66,
}

// open stands for a neighbour that is not there: no step in the bore.
var (
	open    = 0.0
	noPart  = 0.0
	newBore = func() figures.Input {
		d := in("D", segments+".*.bore", figures.Falling, boreBounds)
		d.Series = air.Tubes
		return d
	}
)

// stretch are the inputs of the pressure that one stretch takes, beside the gas.
func stretch() []figures.Input {
	before := in("D before", segments+".*.bore_before", figures.Rising, boreBounds)
	before.WhenNone = &open
	after := in("D after", segments+".*.bore_after", figures.Rising, boreBounds)
	after.WhenNone = &open
	part := in("part", segments+".*.part_drop", figures.Rising, dropBounds)
	part.WhenNone = &noPart
	kind := figures.Input{Name: "k", Path: segments + ".*.bend", Choices: Bends}
	return []figures.Input{
		newBore(), before, after,
		in("L", segments+".*.length", figures.Rising, lengthBounds),
		in("z", segments+".*.bends", figures.Rising, bendBounds),
		kind, part,
	}
}

// Stretch is a piece of pipe of one bore, in m and Pa.
type Stretch struct {
	Bore, Length float64
	// Bends in bores of straight pipe, all together.
	Bends float64
	// Before and After are the bores it is joined to; 0 where it is not.
	Before, After float64
	// Part is what a muffler, catalyst or brake in it takes.
	Part float64
}

// Drop is the pressure in Pa that a stretch takes of a mass flow in kg/s of
// exhaust gas at a temperature in K. A step in the bore counts in the narrower
// of the two stretches, as sudden: a cone takes less.
func (s Stretch) Drop(mass, temperature float64) float64 {
	speed := fluid.PipeSpeed(Volume(mass, temperature), s.Bore)
	reynolds := fluid.Reynolds(mass, s.Bore, fluid.AirViscosity(temperature))
	friction := fluid.Friction(reynolds, fluid.Roughness/s.Bore)
	steps := 0.0
	if s.Before > 0 {
		steps += fluid.Narrowing(s.Before, s.Bore)
	}
	if s.After > 0 {
		steps += fluid.Widening(s.Bore, s.After)
	}
	density := Density(temperature)
	return fluid.PipeDrop(friction, s.Length+s.Bends*s.Bore, s.Bore, density, speed) +
		steps*fluid.DynamicPressure(density, speed) + s.Part
}

var segmentSpeed = &figures.Figure{
	ID:      "exhaust.segment_speed",
	Title:   "speed of the exhaust gas in this stretch",
	Symbol:  "v",
	Kind:    quantity.Speed,
	Unit:    "m/s",
	Per:     segments,
	Formula: volumeFormula + "; v = V/(π·D²/4)",
	Inputs:  append(hotGas(), newBore()),
	Source: figures.Source{
		Title: "mean speed in a round pipe, as in the example of an engine maker's formula",
		URL:   "https://www.scribd.com/document/553835964/배압-계산-공식",
		Basis: "physics",
	},
	Compute: func(a figures.Args) float64 { return fluid.PipeSpeed(volume(a), a.At("D")) },
}

const dropFormula = volumeFormula + "; Δp = (f·(L + z·k·D)/D + K)·ρv²/2 + loss of a part; f by Churchill for steel of 0.045 mm roughness; " +
	"z bends, k = 15 for an elbow of 45°, 20 a long, 33 a short, 66 a square bend; " +
	"K = ½(1 − (D/D before)²) + (1 − (D/D after)²)² where those are wider"

var darcy = figures.Source{
	Title: "Darcy and Weisbach; bends as lengths of straight pipe by a back pressure calculator",
	URL:   "https://www.scribd.com/document/78601980/Back-Pressure-Calculator",
	Basis: "handbook",
}

var segmentDrop = &figures.Figure{
	ID:      "exhaust.segment_drop",
	Title:   "pressure that this stretch of exhaust takes",
	Symbol:  "Δp",
	Kind:    quantity.PressureDifference,
	Unit:    "kPa",
	Per:     segments,
	Formula: dropFormula,
	Inputs:  append(hotGas(), stretch()...),
	Source:  darcy,
	Compute: func(a figures.Args) float64 {
		return Stretch{
			Bore: a.At("D"), Length: a.At("L"), Bends: a.At("z") * a.At("k"),
			Before: a.At("D before"), After: a.At("D after"), Part: a.At("part"),
		}.Drop(mass(a), a.At("T"))
	},
}

// whole are the inputs of the whole run.
func whole() []figures.Input {
	inputs := append(hotGas(), stretch()...)
	for i := range inputs {
		if inputs[i].Name == "D" {
			inputs[i].NonEmpty = true
		}
	}
	return inputs
}

func run(a figures.Args) float64 {
	m, t, sum := mass(a), a.At("T"), 0.0
	for i, bore := range a.Column("D") {
		sum += Stretch{
			Bore: bore, Length: a.Column("L")[i], Bends: a.Column("z")[i] * a.Column("k")[i],
			Before: a.Column("D before")[i], After: a.Column("D after")[i], Part: a.Column("part")[i],
		}.Drop(m, t)
	}
	return sum
}

var pipeDrop = &figures.Figure{
	ID:      "exhaust.pipe_drop",
	Title:   "back pressure of the whole exhaust, computed",
	Symbol:  "ΣΔp",
	Kind:    quantity.PressureDifference,
	Unit:    "kPa",
	Formula: dropFormula + "; the sum of all stretches",
	Inputs:  whole(),
	Source:  darcy,
	Compute: run,
}

var pipeDropUse = &figures.Figure{
	ID:      "exhaust.pipe_drop_use",
	Title:   "back pressure of the whole exhaust, computed, against its limit",
	Symbol:  "ΣΔp/p max",
	Kind:    quantity.Ratio,
	Unit:    "%",
	Formula: dropFormula + "; the sum of all stretches / highest back pressure that the engine's maker allows",
	Inputs:  append(whole(), in("p max", "exhaust.back_pressure_limit", figures.Falling, limitBounds)),
	Source:  darcy,
	Compute: func(a figures.Args) float64 { return run(a) / a.At("p max") },
}
