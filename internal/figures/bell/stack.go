package bell

import (
	"trialfit/internal/figures"
	"trialfit/internal/quantity"
)

// plates are the thicknesses that plate is sold in.
var plates = &figures.Series{Title: "plate", Sizes: []figures.Size{
	{Label: "1/4 in", SI: 0.00635}, {Label: "3/8 in", SI: 0.009525}, {Label: "1/2 in", SI: 0.0127},
	{Label: "5/8 in", SI: 0.015875}, {Label: "3/4 in", SI: 0.01905}, {Label: "1 in", SI: 0.0254},
	{Label: "1 1/4 in", SI: 0.03175}, {Label: "1 1/2 in", SI: 0.0381}, {Label: "2 in", SI: 0.0508},
}}

func adapter(d figures.Direction) figures.Input {
	in := input("t", "transmission.bell.adapter", d, plateBounds)
	in.WhenNone = &straight
	return in
}

func reach(d figures.Direction) figures.Input {
	return input("p", "transmission.bell.input_reach", d, placeBounds)
}

var stackUp = figures.Source{Title: "stack-up of lengths from the rear face of the block, measured", Basis: "physics"}

// StackError is how far the flywheel's face stands behind where the bell wants
// it, from its place behind the block, the adapter's thickness and the place
// wanted behind the bell's front face, in one unit. Positive: too near the
// gearbox, the adapter is too thin.
func StackError(flywheel, adapter, needed float64) float64 { return flywheel - adapter - needed }

var stackError = &figures.Figure{
	ID:      "bell.stack_error",
	Title:   "flywheel face behind where the bell wants it",
	Symbol:  "Δx",
	Kind:    quantity.Length,
	Unit:    "mm",
	Formula: "Δx = F − t − Fn, F the flywheel face, t the adapter, Fn the flywheel face wanted; positive where the adapter is too thin",
	Inputs: []figures.Input{
		input("F", "engine.rear.flywheel_face", figures.Rising, placeBounds),
		fromPlate(adapter(figures.Falling)),
		input("Fn", "transmission.bell.flywheel_needed", figures.Falling, placeBounds),
	},
	Source:  stackUp,
	Compute: func(a figures.Args) float64 { return StackError(a.At("F"), a.At("t"), a.At("Fn")) },
}

func fromPlate(in figures.Input) figures.Input {
	in.Series = plates
	return in
}

// InPilot is how far the tip of the input shaft lies ahead of the pilot
// bearing's rear end, from the place of that end, the adapter's thickness and the
// shaft's reach ahead of the bell, in one unit. Negative where it falls short.
func InPilot(pilot, adapter, reach float64) float64 { return pilot - adapter + reach }

func pilotInputs() []figures.Input {
	return []figures.Input{
		input("b", "engine.rear.pilot_face", figures.Rising, placeBounds), adapter(figures.Falling), reach(figures.Rising),
		input("n", "transmission.bell.nose_length", figures.Rising, partBounds),
	}
}

func engagement(a figures.Args) float64 {
	return min(InPilot(a.At("b"), a.At("t"), a.At("p")), a.At("n"), a.At("l"))
}

const pilotFormula = "least of pilot bearing face − adapter + reach, nose length and bearing length; negative where the shaft falls short"

var pilotEngagement = &figures.Figure{
	ID:      "bell.pilot_engagement",
	Title:   "input shaft in the pilot bearing",
	Symbol:  "e",
	Kind:    quantity.Length,
	Unit:    "mm",
	Formula: pilotFormula,
	Inputs:  append(pilotInputs(), input("l", "engine.rear.pilot_length", figures.Rising, partBounds)),
	Source:  stackUp,
	Compute: engagement,
}

var pilotShare = &figures.Figure{
	ID:      "bell.pilot_share",
	Title:   "share of the pilot bearing that carries the input shaft",
	Symbol:  "e/l",
	Kind:    quantity.Ratio,
	Unit:    "%",
	Formula: "e / bearing length; e = " + pilotFormula,
	Inputs:  append(pilotInputs(), input("l", "engine.rear.pilot_length", figures.Either, partBounds)),
	Source:  stackUp,
	Compute: func(a figures.Args) float64 { return engagement(a) / a.At("l") },
}

var pilotClearance = &figures.Figure{
	ID:      "bell.pilot_clearance",
	Title:   "gap between the input shaft's tip and the bottom of the pilot bore",
	Symbol:  "c",
	Kind:    quantity.Length,
	Unit:    "mm",
	Formula: "c = h − (b − t + p), h the pilot bore's depth, b the pilot bearing's face, t the adapter, p the reach; negative where the shaft pushes the crankshaft",
	Inputs: []figures.Input{
		input("h", "engine.rear.pilot_depth", figures.Rising, partBounds),
		input("b", "engine.rear.pilot_face", figures.Falling, placeBounds), adapter(figures.Rising), reach(figures.Falling),
	},
	Source:  stackUp,
	Compute: func(a figures.Args) float64 { return a.At("h") - InPilot(a.At("b"), a.At("t"), a.At("p")) },
}

// Overlap is the length that two pieces of an axis share, each from its start
// and end, in one unit. Negative where a gap lies between them.
func Overlap(start, end, otherStart, otherEnd float64) float64 {
	return min(end, otherEnd) - max(start, otherStart)
}

func splineInputs(hub figures.Direction) []figures.Input {
	return []figures.Input{
		input("F", "engine.rear.flywheel_face", figures.Either, placeBounds), adapter(figures.Either), reach(figures.Either),
		input("o", "transmission.bell.hub_offset", figures.Either, placeBounds),
		input("h", "transmission.bell.hub_length", hub, partBounds),
		input("s1", "transmission.bell.spline_start", figures.Falling, partBounds),
		input("s2", "transmission.bell.spline_end", figures.Rising, partBounds),
	}
}

func splined(a figures.Args) float64 {
	hub, tip := a.At("F")+a.At("o"), a.At("t")-a.At("p")
	return Overlap(hub, hub+a.At("h"), tip+a.At("s1"), tip+a.At("s2"))
}

const splineFormula = "overlap of the hub, from flywheel face + hub offset over its length, with the spline, from its start to its end behind the tip at adapter − reach"

var splineEngagement = &figures.Figure{
	ID:      "bell.spline_engagement",
	Title:   "disc's hub on the input shaft's spline",
	Symbol:  "e",
	Kind:    quantity.Length,
	Unit:    "mm",
	Formula: splineFormula,
	Inputs:  splineInputs(figures.Rising),
	Source:  stackUp,
	Compute: splined,
}

var splineShare = &figures.Figure{
	ID:      "bell.spline_share",
	Title:   "share of the disc's hub that sits on the spline",
	Symbol:  "e/h",
	Kind:    quantity.Ratio,
	Unit:    "%",
	Formula: "e / hub length; e = " + splineFormula,
	Inputs:  splineInputs(figures.Either),
	Source:  stackUp,
	Compute: func(a figures.Args) float64 { return splined(a) / a.At("h") },
}
