package electrical

import (
	"trialfit/internal/figures"
	"trialfit/internal/quantity"
)

// coldCranking is the source of what a battery is rated by.
var coldCranking = figures.Source{
	Title: "cold cranking current by SAE J537 (30 s at −18 °C, 7.2 V or more), from memory",
	Basis: "memory",
}

var coldCrankingCurrent = figures.Input{
	Name: "CCA", Path: "electrical.battery.cold_cranking_current", Direction: figures.Rising, Valid: crankingBounds,
}

// CCAPerDisplacement is the cold cranking current in A against the displacement
// in m³, in A/m³.
func CCAPerDisplacement(current, displacement float64) float64 { return current / displacement }

var ccaPerDisplacement = &figures.Figure{
	ID:      "electrical.cca_per_displacement",
	Title:   "cold cranking current by displacement",
	Symbol:  "CCA/V",
	Kind:    quantity.CurrentPerVolume,
	Unit:    "A/L",
	Formula: "cold cranking current of the batteries / displacement of the engine",
	Inputs: []figures.Input{
		coldCrankingCurrent,
		{Name: "V", Path: "engine.displacement", Direction: figures.Falling, Valid: displacementBound},
	},
	Source:  coldCranking,
	Compute: func(a figures.Args) float64 { return CCAPerDisplacement(a.At("CCA"), a.At("V")) },
}

// CCAMargin is the cold cranking current in A against what the engine maker
// asks for in A; 1 is just enough.
func CCAMargin(current, need float64) float64 { return current / need }

var ccaMargin = &figures.Figure{
	ID:      "electrical.cca_margin",
	Title:   "cold cranking current against the engine's need",
	Symbol:  "CCA/need",
	Kind:    quantity.Ratio,
	Formula: "cold cranking current of the batteries / cranking need of the engine",
	Inputs: []figures.Input{
		coldCrankingCurrent,
		{Name: "need", Path: "engine.cranking_need", Direction: figures.Falling, Valid: crankingBounds},
	},
	Source:  coldCranking,
	Compute: func(a figures.Args) float64 { return CCAMargin(a.At("CCA"), a.At("need")) },
}
