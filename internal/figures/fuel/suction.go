package fuel

import (
	"trialfit/internal/figures"
	"trialfit/internal/figures/fluid"
	"trialfit/internal/quantity"
)

// gravity is standard gravity in m/s².
const gravity = 9.80665

// LineLoss is the pressure in Pa that friction takes along a smooth straight
// line of a length and a bore in m, from the flow in m³/s, the density in kg/m³
// and the kinematic viscosity in m²/s. Bends and fittings are not in it.
func LineLoss(flow, length, bore, density, viscosity float64) float64 {
	friction := fluid.Friction(Reynolds(flow, bore, viscosity), 0)
	return fluid.PipeDrop(friction, length, bore, density, fluid.PipeSpeed(flow, bore))
}

// Reynolds is the Reynolds number of a flow in m³/s through a bore in m, from the
// kinematic viscosity in m²/s.
func Reynolds(flow, bore, viscosity float64) float64 {
	// Mass flow over dynamic viscosity is volume flow over kinematic viscosity.
	return fluid.Reynolds(flow, bore, viscosity)
}

// Lift is the pressure in Pa that it takes to lift a fluid of a density in kg/m³
// by a height in m.
func Lift(density, height float64) float64 { return density * gravity * height }

// warm and cold hold the figures of the suction line at two temperatures.
var (
	warm = temperature("warm", "warm", "fuel.viscosity_warm")
	cold = temperature("cold", "on the coldest day", "fuel.viscosity_cold")
)

type line struct{ reynolds, suction, use *figures.Figure }

var pipeFlow = figures.Source{
	Title: "Darcy and Weisbach, with Churchill's friction factor of a smooth line: 64/Re while the flow is laminar",
	URL:   "https://www.civilengineeringhandbook.tk/fluid-mechanics/info-qrw.html",
	Basis: "handbook",
}

const suctionFormula = "Δp = f·(ℓ/d)·ρ·v²/2 + ρ·g·h, v = 4·Q/(π·d²), f friction factor after Churchill at Re = v·d/ν, 64/Re while laminar; " +
	"smooth straight line without bends and filter, tank empty"

// temperature declares the figures for the fuel at one viscosity.
func temperature(id, title, viscosity string) line {
	// Where the flow turns turbulent friction rises as the fluid thins, and ρ
	// makes a fluid heavier and the flow of it smaller: neither has a direction.
	nu := func(d figures.Direction) figures.Input {
		return figures.Input{Name: "ν", Path: viscosity, Direction: d, Valid: viscosityBounds}
	}
	reynolds := &figures.Figure{
		ID:      "fuel.reynolds_" + id,
		Title:   "Reynolds number in the suction line, " + title,
		Symbol:  "Re",
		Kind:    quantity.Ratio,
		Formula: "Re = 4·Q/(π·d·ν), d bore of the line, ν viscosity of the fuel, " + suppliedFormula,
		Inputs:  append(supplied(density(figures.Falling)), bore(nil), nu(figures.Falling)),
		Source:  pipeFlow,
		Compute: func(a figures.Args) float64 {
			return Reynolds(flow(a), a.At("d"), a.At("ν"))
		},
	}
	inputs := append(supplied(density(figures.Either)), bore(hoses), nu(figures.Either),
		figures.Input{Name: "ℓ", Path: "fuel.supply_length", Direction: figures.Rising, Valid: lengthBounds},
		figures.Input{Name: "h", Path: "fuel.lift_height", Direction: figures.Rising, Valid: liftBounds})
	return line{
		reynolds: reynolds,
		suction: &figures.Figure{
			ID:      "fuel.suction_" + id,
			Title:   "suction at the lift pump, " + title,
			Symbol:  "Δp",
			Kind:    quantity.PressureDifference,
			Unit:    "kPa",
			Formula: suctionFormula,
			Inputs:  inputs,
			Source:  pipeFlow,
			Compute: suction,
		},
		use: &figures.Figure{
			ID:      "fuel.suction_" + id + "_use",
			Title:   "suction at the lift pump against what it allows, " + title,
			Symbol:  "Δp/Δp max",
			Kind:    quantity.Ratio,
			Unit:    "%",
			Formula: "Δp / suction allowed, " + suctionFormula,
			// A tank above the pump makes the suction negative, and a larger
			// limit then brings it nearer to zero.
			Inputs: append(inputs[:len(inputs):len(inputs)],
				figures.Input{Name: "Δp max", Path: "fuel.suction_limit", Direction: figures.Ends, Valid: suctionBounds}),
			Source:  pipeFlow,
			Compute: func(a figures.Args) float64 { return SuctionUse(suction(a), a.At("Δp max")) },
		},
	}
}

func suction(a figures.Args) float64 {
	return LineLoss(flow(a), a.At("ℓ"), a.At("d"), a.At("ρ"), a.At("ν")) + Lift(a.At("ρ"), a.At("h"))
}

// SuctionUse is a suction against the highest that the lift pump allows, both
// in one unit; 1 is all of it.
func SuctionUse(suction, limit float64) float64 { return suction / limit }
