package torque

import (
	"trialfit/internal/figures"
	"trialfit/internal/quantity"
)

// ClutchTorque is the torque in N·m at which a worn-in clutch slips, from the
// clamp force in N, the outside and inside diameter of the lining in m, the
// number of friction faces and their coefficient of friction. A new clutch, its
// pressure even all over, holds 1 to 2 % more.
func ClutchTorque(clamp, outside, inside, faces, friction float64) float64 {
	return friction * faces * clamp * (outside + inside) / 4
}

const (
	facesPerDisc  = 2
	clutchFormula = "Tc = μ·F·2·discs·(D + d)/4, worn in, the pressure falling as one over the radius"
)

var wornIn = figures.Source{
	Title: "V. B. Bhandari, Machine Design Data Book, friction clutches, uniform wear (worked in a textbook companion)",
	URL:   "https://github.com/FOSSEE/Scilab-TBC-Uploads",
	Basis: "handbook",
}

func clutchInputs(d figures.Direction) []figures.Input {
	lining := figures.Bounds{Low: 0.05, High: 0.6} // m
	return []figures.Input{
		{Name: "F", Path: "transmission.clutch.clamp_force", Direction: d, Valid: figures.Bounds{Low: 500, High: 100_000}}, // N
		{Name: "D", Path: "transmission.clutch.lining_outside", Direction: d, Valid: lining},
		{Name: "d", Path: "transmission.clutch.lining_inside", Direction: d, Valid: lining},
		{Name: "discs", Path: "transmission.clutch.discs", Direction: d, Valid: figures.Bounds{Low: 1, High: 6}},
		{Name: "μ", Path: "transmission.clutch.friction", Direction: d, Valid: figures.Bounds{Low: 0.05, High: 0.8}},
	}
}

func clutchOf(a figures.Args) float64 {
	return ClutchTorque(a.At("F"), a.At("D"), a.At("d"), facesPerDisc*a.At("discs"), a.At("μ"))
}

var clutchCapacity = &figures.Figure{
	ID:      "torque.clutch_capacity",
	Title:   "torque at which the clutch slips",
	Symbol:  "Tc",
	Kind:    quantity.Torque,
	Formula: clutchFormula,
	Inputs:  clutchInputs(figures.Rising),
	Source:  wornIn,
	Compute: clutchOf,
}

var clutchUse = &figures.Figure{
	ID:      "torque.clutch_use",
	Title:   "engine torque against what the clutch holds",
	Symbol:  "T/Tc",
	Kind:    quantity.Ratio,
	Unit:    "%",
	Formula: "T/Tc; " + clutchFormula + "; " + engineFormula,
	Inputs:  append(clutchInputs(figures.Falling), engineInputs()...),
	Source:  wornIn,
	Compute: func(a figures.Args) float64 { return engineOf(a) / clutchOf(a) },
}
