package fuel

import (
	"trialfit/internal/figures"
	"trialfit/internal/figures/fluid"
	"trialfit/internal/quantity"
)

// none is the return of a system from which nothing runs back.
var none = 0.0

// supplied is what the flow in the suction line follows from.
func supplied(density figures.Input) []figures.Input {
	return append(fullLoad(density), figures.Input{
		Name: "R", Path: "fuel.return_flow", Direction: figures.Rising, Valid: returnBounds, WhenNone: &none,
	})
}

const suppliedFormula = "Q = b·P/ρ + R, fuel burnt at full load and return flow"

func flow(a figures.Args) float64 { return burn(a) + a.At("R") }

var balance = figures.Source{
	Title: "what is burnt and what runs back both pass the lift pump",
	Basis: "physics",
}

var supplyFlow = &figures.Figure{
	ID:      "fuel.supply_flow",
	Title:   "fuel drawn from the tank at full load",
	Symbol:  "Q",
	Kind:    quantity.VolumeFlow,
	Unit:    "L/h",
	Formula: suppliedFormula,
	Inputs:  supplied(density(figures.Falling)),
	Source:  balance,
	Compute: flow,
}

// LiftPumpUse is the flow that is drawn against what the lift pump delivers,
// both in one unit; 1 is all of it.
func LiftPumpUse(flow, delivery float64) float64 { return flow / delivery }

var liftPumpUse = &figures.Figure{
	ID:      "fuel.lift_pump_use",
	Title:   "fuel drawn against what the lift pump delivers",
	Symbol:  "Q/Qp",
	Kind:    quantity.Ratio,
	Unit:    "%",
	Formula: "Q/Qp, Qp delivery of the lift pump, " + suppliedFormula,
	Inputs: append(supplied(density(figures.Falling)),
		figures.Input{Name: "Qp", Path: "fuel.lift_pump_flow", Direction: figures.Falling, Valid: deliveryBounds}),
	Source:  balance,
	Compute: func(a figures.Args) float64 { return LiftPumpUse(flow(a), a.At("Qp")) },
}

// hoses are the bores that fuel hose is sold in: SAE J30, from memory.
var hoses = &figures.Series{Title: "fuel hose, inside diameter", Sizes: []figures.Size{
	{Label: "1/4 in", SI: 0.25 * inch}, {Label: "5/16 in", SI: 0.3125 * inch}, {Label: "3/8 in", SI: 0.375 * inch},
	{Label: "1/2 in", SI: 0.5 * inch}, {Label: "5/8 in", SI: 0.625 * inch},
}}

const inch = 0.0254 // m

func bore(sizes *figures.Series) figures.Input {
	return figures.Input{Name: "d", Path: "fuel.supply_bore", Direction: figures.Falling, Valid: boreBounds, Series: sizes}
}

var supplyVelocity = &figures.Figure{
	ID:      "fuel.supply_velocity",
	Title:   "velocity in the suction line",
	Symbol:  "v",
	Kind:    quantity.Speed,
	Unit:    "m/s",
	Formula: "v = 4·Q/(π·d²), d bore of the line, " + suppliedFormula,
	Inputs:  append(supplied(density(figures.Falling)), bore(hoses)),
	Source:  figures.Source{Title: "continuity of flow", Basis: "physics"},
	Compute: func(a figures.Args) float64 { return fluid.PipeSpeed(flow(a), a.At("d")) },
}
