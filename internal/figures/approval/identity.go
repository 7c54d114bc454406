package approval

import (
	"trialfit/internal/figures"
	"trialfit/internal/quantity"
)

// Points that the British registration office gives for main components that
// are still those of the vehicle. The engine's single point is gone with it.
const (
	framePoints     = 5
	componentPoints = 2
)

// IdentityPoints is the sum of the points for what was kept.
func IdentityPoints(frame, suspension, axles, transmission, steering float64) float64 {
	return frame + suspension + axles + transmission + steering
}

func kept(name string, points float64) figures.Input {
	return figures.Input{Name: name, Path: "chassis.kept." + name, Choices: map[string]float64{"true": points, "false": 0}}
}

var identityPoints = &figures.Figure{
	ID:      "approval.identity_points",
	Title:   "points for the main components that were kept, without the engine's",
	Symbol:  "P",
	Kind:    quantity.Ratio,
	Formula: "P = 5 for an unaltered frame or load-bearing body + 2 each for suspension, axles, transmission and steering",
	Inputs: []figures.Input{
		kept("frame", framePoints),
		kept("suspension", componentPoints),
		kept("axles", componentPoints),
		kept("transmission", componentPoints),
		kept("steering", componentPoints),
	},
	Source: figures.Source{
		Title: "points of the British registration office as the Northern Irish one printed them (archived page)",
		URL:   "http://www.nidirect.gov.uk/index/motoring/buying-and-selling-a-vehicle/registering-a-vehicle/registering-a-radically-altered-vehicle.htm",
		Basis: "standard",
	},
	Compute: func(a figures.Args) float64 {
		return IdentityPoints(a.At("frame"), a.At("suspension"), a.At("axles"), a.At("transmission"), a.At("steering"))
	},
}
