package bell

import (
	"math"

	"trialfit/internal/figures"
	"trialfit/internal/quantity"
)

// Dial is the readings of a dial gauge swung round with the crankshaft, at 12, 3,
// 6 and 9 o'clock, in one unit.
type Dial struct{ Top, Right, Bottom, Left float64 }

// Runout is the total indicator reading.
func (d Dial) Runout() float64 {
	return max(d.Top, d.Right, d.Bottom, d.Left) - min(d.Top, d.Right, d.Bottom, d.Left)
}

// Offset is how far the centre of a bore lies beside the crankshaft: half of
// what the readings on opposite sides differ by.
func (d Dial) Offset() float64 { return math.Hypot(d.Top-d.Bottom, d.Right-d.Left) / 2 }

func dialOf(a figures.Args) Dial { return Dial{a.At("d12"), a.At("d3"), a.At("d6"), a.At("d9")} }

func dialInputs(surface string) []figures.Input {
	path := "transmission.bell." + surface + "."
	return []figures.Input{
		input("d12", path+"top", figures.Either, dialBounds), input("d3", path+"right", figures.Either, dialBounds),
		input("d6", path+"bottom", figures.Either, dialBounds), input("d9", path+"left", figures.Either, dialBounds),
	}
}

const (
	runoutFormula = "greatest − least of the readings at 12, 3, 6 and 9 o'clock"
	offsetFormula = "a = √((d12 − d6)² + (d3 − d9)²)/2, d the readings at 12, 3, 6 and 9 o'clock"
)

var indicated = figures.Source{
	Title: "engine manual, alignment of the flywheel housing, total indicator reading",
	URL:   "https://www.manualshelf.com/manual/cummins/n14/specifications-english-spanish-french-german/page-89.html",
	Basis: "manufacturer",
}

// runoutFigures are the total indicator reading on a surface and its use.
func runoutFigures(surface, where string) (runout, use *figures.Figure) {
	runout = &figures.Figure{
		ID:      "bell." + surface + "_runout",
		Title:   "run-out of the bell's " + where,
		Symbol:  "TIR",
		Kind:    quantity.Length,
		Unit:    "mm",
		Formula: runoutFormula,
		Inputs:  dialInputs(surface),
		Source:  indicated,
		Compute: func(a figures.Args) float64 { return dialOf(a).Runout() },
	}
	use = &figures.Figure{
		ID:      "bell." + surface + "_runout_use",
		Title:   "run-out of the bell's " + where + " against its limit",
		Symbol:  "TIR/limit",
		Kind:    quantity.Ratio,
		Unit:    "%",
		Formula: runoutFormula + " / limit by the maker",
		Inputs: append(dialInputs(surface),
			input("limit", "transmission.bell."+surface+"_limit", figures.Falling, runoutBounds)),
		Source:  indicated,
		Compute: func(a figures.Args) float64 { return dialOf(a).Runout() / a.At("limit") },
	}
	return runout, use
}

var (
	boreRunout, boreRunoutUse = runoutFigures("bore", "bore")
	faceRunout, faceRunoutUse = runoutFigures("face", "face")
)

var beside = figures.Source{
	Title: "centring a bell with offset dowels",
	URL:   "http://craig.backfire.ca/pages/autos/boxchevy/bell-housing",
	Basis: "common-practice",
}

var boreOffset = &figures.Figure{
	ID:      "bell.bore_offset",
	Title:   "offset of the bell's bore from the crankshaft as measured",
	Symbol:  "a",
	Kind:    quantity.Length,
	Unit:    "mm",
	Formula: offsetFormula,
	Inputs:  dialInputs("bore"),
	Source:  beside,
	Compute: func(a figures.Args) float64 { return dialOf(a).Offset() },
}

// dowelSizes are the offsets that dowels are sold in.
var dowelSizes = &figures.Series{Title: "offset dowels", Sizes: []figures.Size{
	{Label: "0.007 in", SI: 0.0001778}, {Label: "0.014 in", SI: 0.0003556}, {Label: "0.021 in", SI: 0.0005334},
}}

// OffsetLeft is what dowels of an offset, turned against that of the bore, leave
// of it, in one unit.
func OffsetLeft(bore, dowels float64) float64 { return math.Abs(bore - dowels) }

var boreOffsetLeft = &figures.Figure{
	ID:      "bell.bore_offset_left",
	Title:   "offset of the bell's bore with the dowels fitted",
	Symbol:  "a'",
	Kind:    quantity.Length,
	Unit:    "mm",
	Formula: "|a − ad|, ad the offset of the dowels, turned against it; " + offsetFormula + ", read with straight dowels",
	Inputs: append(dialInputs("bore"), figures.Input{
		Name: "ad", Path: "transmission.bell.dowels", Valid: figures.Bounds{Low: 0, High: 0.005}, WhenNone: &straight, Series: dowelSizes,
	}),
	Source:  beside,
	Compute: func(a figures.Args) float64 { return OffsetLeft(dialOf(a).Offset(), a.At("ad")) },
}
