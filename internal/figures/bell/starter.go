package bell

import (
	"trialfit/internal/figures"
	"trialfit/internal/quantity"
)

func starter(name, leaf string, d figures.Direction) figures.Input {
	return input(name, "transmission.starter."+leaf, d, partBounds)
}

var meshing = figures.Source{Title: "lengths from the starter's mounting face, measured", Basis: "physics"}

var pinionGap = &figures.Figure{
	ID:      "bell.pinion_gap",
	Title:   "gap between the starter pinion at rest and the ring gear",
	Symbol:  "g",
	Kind:    quantity.Length,
	Unit:    "mm",
	Formula: "g = R − P0, the distance to the ring gear less the pinion at rest; negative where they touch",
	Inputs:  []figures.Input{starter("R", "ring_distance", figures.Rising), starter("P0", "pinion_rest", figures.Falling)},
	Source:  meshing,
	Compute: func(a figures.Args) float64 { return a.At("R") - a.At("P0") },
}

var pinionShare = &figures.Figure{
	ID:      "bell.pinion_share",
	Title:   "share of the ring gear's width that the pinion meshes with",
	Symbol:  "e/b",
	Kind:    quantity.Ratio,
	Unit:    "%",
	Formula: "lesser of (pinion thrown out − distance to the ring gear) and the ring gear's width / width",
	Inputs: []figures.Input{
		starter("P1", "pinion_out", figures.Rising), starter("R", "ring_distance", figures.Falling),
		starter("b", "ring_width", figures.Either),
	},
	Source:  meshing,
	Compute: func(a figures.Args) float64 { return min(a.At("P1")-a.At("R"), a.At("b")) / a.At("b") },
}

// rootOfModule is the clearance of standard full-depth teeth at their root:
// 1.25 modules deep, 1 module high.
const rootOfModule = 0.25

// CentreDistance is that of two standard spur gears, from their teeth and their
// module, in the module's unit.
func CentreDistance(teeth, other, module float64) float64 { return module * (teeth + other) / 2 }

// RootClearance is the gap between the tip of one gear's tooth and the root of
// the other's, from their centre distance, teeth and module, in one unit.
func RootClearance(distance, teeth, other, module float64) float64 {
	return distance - CentreDistance(teeth, other, module) + rootOfModule*module
}

var pinionRoot = &figures.Figure{
	ID:      "bell.pinion_root_clearance",
	Title:   "gap between the ring gear's tooth tips and the pinion's roots",
	Symbol:  "c",
	Kind:    quantity.Length,
	Unit:    "mm",
	Formula: "c = ac − m·(z1 + z2)/2 + 0.25·m, ac the centre distance, m the module, z teeth; full-depth teeth, not shifted",
	Inputs: []figures.Input{
		starter("ac", "centre_distance", figures.Rising),
		input("z1", "transmission.starter.ring_teeth", figures.Falling, figures.Bounds{Low: 50, High: 300}),
		input("z2", "transmission.starter.pinion_teeth", figures.Falling, figures.Bounds{Low: 6, High: 30}),
		input("m", "transmission.starter.module", figures.Falling, figures.Bounds{Low: 0.001, High: 0.006}),
	},
	Source: figures.Source{
		Title: "spur gears, full-depth teeth of ISO 53",
		URL:   "https://www.metricmech.com/articles/spur-gear-calculation",
		Basis: "standard",
	},
	Compute: func(a figures.Args) float64 { return RootClearance(a.At("ac"), a.At("z1"), a.At("z2"), a.At("m")) },
}
