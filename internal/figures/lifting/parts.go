package lifting

import (
	"trialfit/internal/figures"
	"trialfit/internal/quantity"
)

// LoadOfParts is the mass in kg of parts lifted in one piece, each in kg.
func LoadOfParts(parts []float64) float64 {
	sum := 0.0
	for _, m := range parts {
		sum += m
	}
	return sum
}

func pieces(d figures.Direction) figures.Input {
	return figures.Input{Name: "parts", Path: lifts + ".*.parts.*.mass", Direction: d, Valid: partBounds, NonEmpty: true}
}

var partBounds = figures.Bounds{Low: 0.1, High: 20_000} // kg

var hookLoadOfParts = &figures.Figure{
	ID:      "lifting.hook_load_of_parts",
	Title:   "mass on the hook, by the parts of the load",
	Symbol:  "Wp",
	Kind:    quantity.Mass,
	Per:     lifts,
	Formula: "Wp = Σ parts + tackle",
	Inputs:  []figures.Input{pieces(figures.Rising), hangs[1]},
	Source:  statics,
	Compute: func(a figures.Args) float64 { return HookLoad(LoadOfParts(a.Column("parts")), a.At("mt")) },
}

var partsShare = &figures.Figure{
	ID:      "lifting.parts_share",
	Title:   "masses of the parts against that of the load",
	Symbol:  "Σ/m",
	Kind:    quantity.Ratio,
	Unit:    "%",
	Per:     lifts,
	Formula: "Σ parts / load",
	Inputs: []figures.Input{
		pieces(figures.Rising),
		{Name: "m", Path: hangs[0].Path, Direction: figures.Falling, Valid: massBounds},
	},
	Source:  statics,
	Compute: func(a figures.Args) float64 { return LoadOfParts(a.Column("parts")) / a.At("m") },
}
