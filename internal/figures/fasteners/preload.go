package fasteners

import (
	"trialfit/internal/figures"
	"trialfit/internal/quantity"
)

// Reusable is the part of the proof load to which a bolt is tightened that will
// come out again (common practice); one that stays may have 0.90.
const Reusable = 0.75

// Preload is the clamping force in N of one bolt of a diameter in m, from its
// tightening torque in N·m and its nut factor.
func Preload(torque, factor, diameter float64) float64 { return torque / (factor * diameter) }

// TighteningTorque is the torque in N·m that gives a preload in N.
func TighteningTorque(preload, factor, diameter float64) float64 { return factor * diameter * preload }

var shortForm = figures.Source{
	Title: "T = K·d·F, short form of the tightening torque",
	URL:   "https://manualshive.com/en/manual/emerson/bettis-500/102051?page=97",
	Basis: "handbook",
}

const preloadFormula = "F = T/(K·d)"

// torqued declares what a preload reads; more preload moves the figure the way d.
func torqued(d, less figures.Direction) []figures.Input {
	return []figures.Input{
		{Name: "T", Path: bolts + ".*.torque", Direction: d, Valid: torqueBounds},
		{Name: "K", Path: bolts + ".*.nut_factor", Direction: less, Valid: factorBounds},
		diameter(less),
	}
}

func preloaded(a figures.Args) float64 { return Preload(a.At("T"), a.At("K"), a.At("d")) }

var preload = &figures.Figure{
	ID:      "fasteners.preload",
	Title:   "preload of one bolt by its torque",
	Symbol:  "F",
	Kind:    quantity.Force,
	Unit:    "kN",
	Per:     bolts,
	Formula: preloadFormula,
	Inputs:  torqued(figures.Rising, figures.Falling),
	Source:  shortForm,
	Compute: preloaded,
}

var preloadUse = &figures.Figure{
	ID:         "fasteners.preload_use",
	Title:      "preload against the proof load of the bolt",
	Symbol:     "F/Fp",
	Kind:       quantity.Ratio,
	Unit:       "%",
	Per:        bolts,
	Formula:    preloadFormula + "; F/Fp, " + proofFormula,
	Inputs:     append(torqued(figures.Rising, figures.Falling), pitch(figures.Rising), class),
	Conditions: covered,
	Source:     shortForm,
	Compute:    func(a figures.Args) float64 { return preloaded(a) / proof(a) },
}

var tighteningTorque = &figures.Figure{
	ID:      "fasteners.tightening_torque",
	Title:   "torque that gives three quarters of the proof load",
	Symbol:  "T75",
	Kind:    quantity.Torque,
	Per:     bolts,
	Formula: "T75 = K·d·0.75·Fp; " + proofFormula,
	Inputs: []figures.Input{
		{Name: "K", Path: bolts + ".*.nut_factor", Direction: figures.Rising, Valid: factorBounds},
		diameter(figures.Rising), pitch(figures.Falling), class,
	},
	Conditions: covered,
	Source:     shortForm,
	Compute:    func(a figures.Args) float64 { return TighteningTorque(Reusable*proof(a), a.At("K"), a.At("d")) },
}
