package electrical

import (
	"math"

	"trialfit/internal/figures"
	"trialfit/internal/quantity"
)

// belt is the drive of the alternator by a belt over two pulleys.
func belt(crank, alternator, centres figures.Direction) []figures.Input {
	return []figures.Input{
		{Name: "D", Path: "electrical.alternator.crank_pulley", Direction: crank, Valid: pulleyBounds},
		{Name: "d", Path: "electrical.alternator.pulley", Direction: alternator, Valid: pulleyBounds},
		{Name: "C", Path: "electrical.alternator.centres", Direction: centres, Valid: centreBounds},
	}
}

var openBelt = figures.Source{
	Title: "open belt over two pulleys",
	URL:   "https://fliphtml5.com/eraqv/nlwf/Machine_Elements_in_Mechanical_Design_%284th_Edition%29_%28_PDFDrive_%29/295",
	Basis: "handbook",
}

// beltGap keeps the pulleys of the other figures apart.
var beltGap = &figures.Figure{
	ID:      "electrical.belt_gap",
	Title:   "gap between crank pulley and alternator pulley",
	Symbol:  "g",
	Kind:    quantity.Length,
	Formula: "g = C − (D + d)/2, C distance of the shafts, D crank pulley, d alternator pulley",
	Inputs:  belt(figures.Falling, figures.Falling, figures.Rising),
	Source:  openBelt,
	Compute: func(a figures.Args) float64 { return a.At("C") - (a.At("D")+a.At("d"))/2 },
}

var apart = []figures.Condition{{Figure: beltGap, Valid: figures.Bounds{Low: 0.001, High: 2}}}

// Wrap is the angle in rad that an open belt lies on the smaller of two pulleys,
// from their pitch diameters and the distance of their shafts, all in m.
func Wrap(large, small, centres float64) float64 {
	return math.Pi - 2*math.Asin(math.Abs(large-small)/(2*centres))
}

var beltWrap = &figures.Figure{
	ID:         "electrical.belt_wrap",
	Title:      "angle the belt lies on the smaller pulley",
	Symbol:     "θ",
	Kind:       quantity.Angle,
	Unit:       "°",
	Formula:    "θ = 180° − 2·arcsin(|D − d|/(2·C)), D crank pulley, d alternator pulley, C distance of the shafts; two pulleys, no idler",
	Inputs:     belt(figures.Either, figures.Either, figures.Rising),
	Conditions: apart,
	Source:     openBelt,
	Compute:    func(a figures.Args) float64 { return Wrap(a.At("D"), a.At("d"), a.At("C")) },
}

// BeltLength is the length in m of an open belt over two pulleys, from their
// pitch diameters and the distance of their shafts in m.
func BeltLength(large, small, centres float64) float64 {
	return 2*centres + math.Pi*(large+small)/2 + (large-small)*(large-small)/(4*centres)
}

const lengthFormula = "L = 2·C + π·(D + d)/2 + (D − d)²/(4·C), D crank pulley, d alternator pulley, C distance of the shafts; two pulleys, no idler"

var beltLength = &figures.Figure{
	ID:         "electrical.belt_length",
	Title:      "length the alternator's belt needs",
	Symbol:     "L",
	Kind:       quantity.Length,
	Formula:    lengthFormula,
	Inputs:     belt(figures.Rising, figures.Rising, figures.Rising),
	Conditions: apart,
	Source:     openBelt,
	Compute:    needsLength,
}

var beltLengthError = &figures.Figure{
	ID:      "electrical.belt_length_error",
	Title:   "belt fitted against the length it needs",
	Symbol:  "ΔL/L",
	Kind:    quantity.Ratio,
	Unit:    "%",
	Formula: "belt length/L − 1, " + lengthFormula,
	Inputs: with(belt(figures.Falling, figures.Falling, figures.Falling),
		figures.Input{Name: "belt length", Path: "electrical.alternator.belt_length", Direction: figures.Rising, Valid: beltBounds}),
	Conditions: apart,
	Source:     openBelt,
	Compute:    func(a figures.Args) float64 { return a.At("belt length")/needsLength(a) - 1 },
}

func needsLength(a figures.Args) float64 { return BeltLength(a.At("D"), a.At("d"), a.At("C")) }

// Misalignment is the angle in rad between a belt and the grooves, from their
// offset over the distance of the shafts, both in m.
func Misalignment(offset, centres float64) float64 { return math.Atan(offset / centres) }

var beltMisalignment = &figures.Figure{
	ID:      "electrical.belt_misalignment",
	Title:   "how far the belt runs out of line",
	Symbol:  "γ",
	Kind:    quantity.Angle,
	Unit:    "°",
	Formula: "γ = arctan(e/C), e offset of the pulleys, C distance of the shafts",
	Inputs: []figures.Input{
		{Name: "e", Path: "electrical.alternator.offset", Direction: figures.Rising, Valid: offsetBounds},
		{Name: "C", Path: "electrical.alternator.centres", Direction: figures.Falling, Valid: centreBounds},
	},
	Source: figures.Source{
		Title: "geometry; belt makers allow ½° for a V-belt and ⅓° for a ribbed one, from memory",
		Basis: "physics",
	},
	Compute: func(a figures.Args) float64 { return Misalignment(a.At("e"), a.At("C")) },
}
