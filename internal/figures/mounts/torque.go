package mounts

import (
	"trialfit/internal/figures"
	"trialfit/internal/figures/torque"
	"trialfit/internal/quantity"
)

// RollCouple is the couple in N·m that the mounts hold about the length of the
// vehicle: the torque in N·m that leaves the gearbox or transfer case, from that
// of the engine and the ratios on its way. Where the tyres slip first it is less.
func RollCouple(torque float64, ratios ...float64) float64 {
	for _, r := range ratios {
		torque *= r
	}
	return torque
}

// TorqueLoad is what a roll couple in N·m adds to one engine mount and takes
// off the other, as a mass in kg, when the two stand spread m apart and hold it
// alone.
func TorqueLoad(couple, spread float64) float64 { return couple / (spread * gravity) }

var reaction = figures.Source{
	Title: "reaction of the engine mounts to the torque at the output shafts, held by their spread; from memory",
	Basis: "physics",
}

const coupleFormula = "C = T·SR·i1·il, with T the peak torque, × 0.95 where it is gross, SR the stall ratio of the converter, " +
	"i1 of first gear and il of the low range, 1 for what there is none of"

var direct = 1.0

func geared(d figures.Direction) []figures.Input {
	return []figures.Input{
		{Name: "T", Path: "engine.peak_torque", Direction: d, Valid: torqueBounds},
		{Name: "net", Path: "engine.rating_method", Choices: map[string]float64{"net": 1, "gross": torque.NetOfGross}},
		{Name: "SR", Path: "transmission.stall_ratio", Direction: d, Valid: stallBounds, WhenNone: &direct},
		{Name: "i1", Path: "transmission.first", Direction: d, Valid: ratioBounds},
		{Name: "il", Path: "transfer_case.low", Direction: d, Valid: ratioBounds, WhenNone: &direct},
	}
}

func couple(a figures.Args) float64 {
	return RollCouple(a.At("T"), a.At("net"), a.At("SR"), a.At("i1"), a.At("il"))
}

var rollCouple = &figures.Figure{
	ID:      "mounts.roll_couple",
	Title:   "couple on the mounts at full torque in the lowest gear, at most",
	Symbol:  "C",
	Kind:    quantity.Torque,
	Formula: coupleFormula,
	Inputs:  geared(figures.Rising),
	Source:  reaction,
	Compute: couple,
}

// spread declares how far the engine mounts stand apart: the further, the less
// each bears of the couple.
func spread(d figures.Direction) []figures.Input {
	return []figures.Input{{Name: "b", Path: "frame.mounts.spread", Direction: d, Valid: spreadBounds}}
}

func byTorque(a figures.Args) float64 { return TorqueLoad(couple(a), a.At("b")) }

const torqueFormula = "ΔF = C/(b·g); " + coupleFormula

var torqueLoad = &figures.Figure{
	ID:      "mounts.torque_load",
	Title:   "what full torque in the lowest gear adds to one engine mount and takes off the other",
	Symbol:  "ΔF",
	Kind:    quantity.Mass,
	Formula: torqueFormula,
	Inputs:  append(geared(figures.Rising), spread(figures.Falling)...),
	Source:  reaction,
	Compute: byTorque,
}

func withTorque(d, apart figures.Direction) []figures.Input {
	return append(append(resting(figures.Falling), geared(d)...), spread(apart)...)
}

var pressed = &figures.Figure{
	ID:         "mounts.pressed_load",
	Title:      "load on the engine mount that torque presses down, lowest gear",
	Symbol:     "Fe+",
	Kind:       quantity.Mass,
	Formula:    "Fe + ΔF; " + engineFormula + "; " + torqueFormula,
	Inputs:     withTorque(figures.Rising, figures.Falling),
	Conditions: carries,
	Source:     reaction,
	Compute:    func(a figures.Args) float64 { return engineAtRest(a) + byTorque(a) },
}

var pressedUse = &figures.Figure{
	ID:      "mounts.pressed_use",
	Title:   "engine mount that torque presses down against its rating",
	Symbol:  "Fe+/r",
	Kind:    quantity.Ratio,
	Unit:    "%",
	Formula: pressed.Formula + "; divided by the rating of one engine mount",
	Inputs: append(withTorque(figures.Rising, figures.Falling),
		figures.Input{Name: "r", Path: "frame.mounts.engine_rating", Direction: figures.Pivot, Valid: ratingBounds}),
	Conditions: carries,
	Source:     reaction,
	Compute:    func(a figures.Args) float64 { return pressed.Compute(a) / a.At("r") },
}

var lifted = &figures.Figure{
	ID:         "mounts.lifted_load",
	Title:      "load on the engine mount that torque lifts, lowest gear; negative pulls it apart",
	Symbol:     "Fe−",
	Kind:       quantity.Mass,
	Formula:    "Fe − ΔF; " + engineFormula + "; " + torqueFormula,
	Inputs:     withTorque(figures.Falling, figures.Rising),
	Conditions: carries,
	Source:     reaction,
	Compute:    func(a figures.Args) float64 { return engineAtRest(a) - byTorque(a) },
}
