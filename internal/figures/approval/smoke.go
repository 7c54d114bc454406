package approval

import (
	"math"

	"trialfit/internal/figures"
	"trialfit/internal/quantity"
)

// PathLength is the effective path in m through the smoke by which opacimeters
// give their reading (UN Regulation 24, annex 3, from memory).
const PathLength = 0.430

// Opacity is the share of light that smoke of an absorption coefficient in 1/m
// takes away over a path in m: the law of Beer and Lambert.
func Opacity(coefficient, path float64) float64 { return 1 - math.Exp(-coefficient*path) }

// SmokeCoefficient is the absorption coefficient in 1/m of smoke that takes
// away a share of the light over a path in m.
func SmokeCoefficient(opacity, path float64) float64 { return -math.Log(1-opacity) / path }

var beerLambert = figures.Source{
	Title: "law of Beer and Lambert over the opacimeter's effective path of 0.430 m (UN Regulation 24, annex 3, from memory)",
	Basis: "physics",
}

// The two measures belong to different tests: where a rule names one, the
// other serves only to see where the vehicle stands.
var (
	opacity = &figures.Figure{
		ID:      "approval.opacity",
		Title:   "opacity that the measured smoke coefficient stands for",
		Symbol:  "N",
		Kind:    quantity.Ratio,
		Unit:    "%",
		Formula: "N = 1 − exp(−k·L), L = 0.430 m",
		Inputs: []figures.Input{
			{Name: "k", Path: "engine.smoke_coefficient", Direction: figures.Rising, Valid: absorptionBounds},
		},
		Source:  beerLambert,
		Compute: func(a figures.Args) float64 { return Opacity(a.At("k"), PathLength) },
	}
	smokeCoefficient = &figures.Figure{
		ID:      "approval.smoke_coefficient",
		Title:   "smoke coefficient that the measured opacity stands for",
		Symbol:  "k",
		Kind:    quantity.Absorption,
		Formula: "k = −ln(1 − N)/L, L = 0.430 m",
		Inputs: []figures.Input{
			{Name: "N", Path: "engine.smoke_opacity", Direction: figures.Rising, Valid: figures.Bounds{Low: 0, High: 0.999}},
		},
		Source:  beerLambert,
		Compute: func(a figures.Args) float64 { return SmokeCoefficient(a.At("N"), PathLength) },
	}
	smokePlateUse = &figures.Figure{
		ID:      "approval.smoke_plate_use",
		Title:   "smoke coefficient against the one on the plate",
		Symbol:  "k/kp",
		Kind:    quantity.Ratio,
		Unit:    "%",
		Formula: "measured coefficient / coefficient on the plate",
		Inputs: []figures.Input{
			{Name: "k", Path: "engine.smoke_coefficient", Direction: figures.Rising, Valid: absorptionBounds},
			{Name: "kp", Path: "engine.smoke_plate", Direction: figures.Falling, Valid: figures.Bounds{Low: 0.1, High: 10}},
		},
		Source:  definition,
		Compute: func(a figures.Args) float64 { return a.At("k") / a.At("kp") },
	}
)

var (
	absorptionBounds = figures.Bounds{Low: 0, High: 10}   // 1/m
	soundBounds      = figures.Bounds{Low: 40, High: 140} // dB(A)
)

var noiseOverReference = &figures.Figure{
	ID:      "approval.noise_over_reference",
	Title:   "stationary noise above that of the model",
	Symbol:  "ΔL",
	Kind:    quantity.SoundLevel,
	Formula: "ΔL = measured level − level recorded for the model",
	Inputs: []figures.Input{
		{Name: "L", Path: "engine.noise", Direction: figures.Rising, Valid: soundBounds},
		{Name: "Lr", Path: "engine.noise_reference", Direction: figures.Falling, Valid: soundBounds},
	},
	Source:  definition,
	Compute: func(a figures.Args) float64 { return a.At("L") - a.At("Lr") },
}
