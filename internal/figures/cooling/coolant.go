package cooling

import (
	"trialfit/internal/figures"
	"trialfit/internal/figures/fluid"
	"trialfit/internal/quantity"
)

func glycol(d figures.Direction) figures.Input { return in("g", "cooling.glycol", d, glycolBounds) }

func coolantFlow(d figures.Direction) figures.Input {
	return in("V", "cooling.coolant_flow", d, flowBounds)
}

// HeatPerVolume is the heat in J/(m³·K) that coolant of 90 °C takes up, from
// its share of ethylene glycol by volume: 4.065 MJ for water, 3.72 for a half
// mixture (densities by ASHRAE, heat capacities from memory).
func HeatPerVolume(glycol float64) float64 { return 4.065e6 - 0.69e6*glycol }

// Rise is how far a flow in m³/s warms up in K, from the heat in W and the heat
// per volume in J/(m³·K) that it takes.
func Rise(heat, flow, perVolume float64) float64 { return heat / (flow * perVolume) }

const warming = "c = (4.065 − 0.69·glycol share) MJ/(m³·K) at 90 °C"

var balance = figures.Source{
	Title: "heat balance of the coolant; water and glycol of 90 °C, densities by the ASHRAE table printed here",
	URL:   "http://38.142.81.21:8001/manual/viega/24010-viega/install-instructions-english/page-113.html",
	Basis: "physics",
}

var temperatureRise = &figures.Figure{
	ID:      "cooling.temperature_rise",
	Title:   "rise of the coolant through the engine",
	Symbol:  "ΔT",
	Kind:    quantity.TemperatureDifference,
	Unit:    "K",
	Formula: "ΔT = Q / (V·c), " + warming,
	Inputs:  []figures.Input{heat(figures.Rising), coolantFlow(figures.Falling), glycol(figures.Rising)},
	Source:  balance,
	Compute: func(a figures.Args) float64 { return Rise(a.At("Q"), a.At("V"), HeatPerVolume(a.At("g"))) },
}

// DesignRise is the rise through the engine in K for which the flow needed is
// worked out: engine makers want 5 to 8.
const DesignRise = 8

var flowNeeded = &figures.Figure{
	ID:      "cooling.flow_needed",
	Title:   "coolant flow that keeps the rise to 8 K",
	Symbol:  "V",
	Kind:    quantity.VolumeFlow,
	Unit:    "L/min",
	Formula: "V = Q / (8 K · c), " + warming,
	Inputs:  []figures.Input{heat(figures.Rising), glycol(figures.Rising)},
	Source:  balance,
	Compute: func(a figures.Args) float64 { return a.At("Q") / (DesignRise * HeatPerVolume(a.At("g"))) },
}

// hoseSizes are the bores that radiator hose is sold in, from memory of SAE J20.
var hoseSizes = &figures.Series{Title: "radiator hose, inside diameter", Sizes: []figures.Size{
	{Label: "1 in", SI: 0.0254}, {Label: "1 1/8 in", SI: 0.028575}, {Label: "1 1/4 in", SI: 0.03175},
	{Label: "1 3/8 in", SI: 0.034925}, {Label: "1 1/2 in", SI: 0.0381}, {Label: "1 5/8 in", SI: 0.041275},
	{Label: "1 3/4 in", SI: 0.04445}, {Label: "2 in", SI: 0.0508}, {Label: "2 1/4 in", SI: 0.05715},
	{Label: "2 1/2 in", SI: 0.0635}, {Label: "2 3/4 in", SI: 0.06985}, {Label: "3 in", SI: 0.0762},
}}

func hoseSpeed(id, title, bore string) *figures.Figure {
	d := in("d", bore, figures.Falling, pipeBounds)
	d.Series = hoseSizes
	return &figures.Figure{
		ID:      "cooling." + id,
		Title:   title,
		Symbol:  "v",
		Kind:    quantity.Speed,
		Unit:    "m/s",
		Formula: "v = V / (π·d²/4)",
		Inputs:  []figures.Input{coolantFlow(figures.Rising), d},
		Source: figures.Source{
			Title: "mean speed in a round pipe",
			URL:   "https://calculatorlib.com/water-velocity-pipe-gpm-diameter-calculator",
			Basis: "physics",
		},
		Compute: func(a figures.Args) float64 { return fluid.PipeSpeed(a.At("V"), a.At("d")) },
	}
}

var (
	upperHoseSpeed = hoseSpeed("upper_hose_speed", "speed of the coolant in the upper hose", "cooling.upper_hose")
	lowerHoseSpeed = hoseSpeed("lower_hose_speed", "speed of the coolant in the lower hose", "cooling.lower_hose")
)
