package gearing

import (
	"math"

	"trialfit/internal/figures"
	"trialfit/internal/quantity"
	"trialfit/internal/tyre"
)

// TyreAgreement is the diameter of a tyre as measured over the one that its size
// code names, in one unit.
func TyreAgreement(measured, named float64) float64 { return measured / named }

var tyreAgreement = &figures.Figure{
	ID:      "gearing.tyre_agreement",
	Title:   "tyre's diameter against its size code",
	Symbol:  "D/Dc",
	Kind:    quantity.Ratio,
	Unit:    "%",
	Formula: "D / Dc, Dc = rim + 2 × width × ratio of height to width, or the first number of an inch size",
	Inputs: []figures.Input{
		tyreInput(figures.Rising),
		{Name: "Dc", Path: "chassis.tyres.rear_size.diameter", Direction: figures.Falling, Valid: tyreBounds},
	},
	Source: figures.Source{
		Title: "what the numbers of a size code stand for",
		URL:   "https://tiresize.com/tire-size-meaning",
		Basis: "handbook",
	},
	Compute: func(a figures.Args) float64 { return TyreAgreement(a.At("D"), a.At("Dc")) },
}

var loaded = figures.Source{
	Title: "rolling circumference of a radial tyre, 3.05·D (ETRTO, from memory)",
	URL:   "http://www.greatlakes4x4.com/showpost.php?p=65198&postcount=5",
	Basis: "memory",
}

var rollingRadius = &figures.Figure{
	ID:      "gearing.rolling_radius",
	Title:   "rolling radius of the loaded rear tyre",
	Symbol:  "r",
	Kind:    quantity.Length,
	Formula: "r = 0.971·D/2, D the overall diameter; radial tyre",
	Inputs:  []figures.Input{tyreInput(figures.Rising)},
	Source:  loaded,
	Compute: func(a figures.Args) float64 { return tyre.RollingRadius(a.At("D")) },
}

// TurnsPerLength is the turns of a wheel for each m of road, from its rolling
// radius in m.
func TurnsPerLength(radius float64) float64 { return 1 / (2 * math.Pi * radius) }

var tyreTurns = &figures.Figure{
	ID:      "gearing.tyre_turns",
	Title:   "turns of the loaded rear tyre for a length of road",
	Symbol:  "N",
	Kind:    quantity.TurnsPerLength,
	Unit:    "rev/mi",
	Formula: "N = 1/(2·π·r), r = 0.971·D/2, D the overall diameter; radial tyre",
	Inputs:  []figures.Input{tyreInput(figures.Falling)},
	Source:  loaded,
	Compute: func(a figures.Args) float64 { return TurnsPerLength(tyre.RollingRadius(a.At("D"))) },
}
