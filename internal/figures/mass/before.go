package mass

import (
	"trialfit/internal/figures"
	"trialfit/internal/quantity"
)

// AxleLoadBefore is the load in kg on an axle whose wheels were weighed, in kg.
func AxleLoadBefore(left, right float64) float64 { return left + right }

var (
	axleLoadFrontBefore = &figures.Figure{
		ID:      "mass.axle_load_front_before",
		Title:   "front axle load as found",
		Symbol:  "F",
		Kind:    quantity.Mass,
		Formula: "F = FL + FR",
		Inputs:  corners("front", figures.Rising, figures.Rising),
		Source:  statics,
		Compute: func(a figures.Args) float64 { return AxleLoadBefore(a.At("FL"), a.At("FR")) },
	}
	axleLoadRearBefore = &figures.Figure{
		ID:      "mass.axle_load_rear_before",
		Title:   "rear axle load as found",
		Symbol:  "R",
		Kind:    quantity.Mass,
		Formula: "R = RL + RR",
		Inputs:  corners("rear", figures.Rising, figures.Rising),
		Source:  statics,
		Compute: func(a figures.Args) float64 { return AxleLoadBefore(a.At("RL"), a.At("RR")) },
	}
)
