package cooling

import (
	"math"

	"trialfit/internal/figures"
	"trialfit/internal/figures/fluid"
	"trialfit/internal/quantity"
)

// AirFlow is the flow in m³/s of air of a density in kg/m³ that carries a heat
// in W while it warms up by a rise in K.
func AirFlow(heat, density, rise float64) float64 { return heat / (density * fluid.AirHeat * rise) }

// carries are the inputs of the air flow needed.
func carries() []figures.Input {
	return []figures.Input{
		heat(figures.Rising),
		in("ΔTa", "cooling.air_rise", figures.Falling, differenceBounds),
		in("Ta", "registration.ambient", figures.Rising, ambientBounds),
		in("H", "registration.altitude", figures.Rising, altitudeBounds),
	}
}

func airNeeded(a figures.Args) float64 {
	density := fluid.AirDensity(fluid.StandardPressure(a.At("H")), a.At("Ta"))
	return AirFlow(a.At("Q"), density, a.At("ΔTa"))
}

const airFormula = "V = Q / (ρ · 1.007 kJ/(kg·K) · rise of the air), ρ on the hottest day at the highest altitude"

var airBalance = figures.Source{
	Title: "heat balance of the cooling air",
	URL:   "https://www.scribd.com/document/654894162/CALCULATION-OF-VENTILATION-AIRFLOW-RADIATOR-COOLING-FAN-CFM",
	Basis: "physics",
}

var airFlowNeeded = &figures.Figure{
	ID:      "cooling.air_flow_needed",
	Title:   "air flow the radiator needs",
	Symbol:  "V",
	Kind:    quantity.VolumeFlow,
	Unit:    "m³/s",
	Formula: airFormula,
	Inputs:  carries(),
	Source:  airBalance,
	Compute: airNeeded,
}

var fanFlowUse = &figures.Figure{
	ID:      "cooling.fan_flow_use",
	Title:   "air flow needed against that of the fan",
	Symbol:  "V/Vf",
	Kind:    quantity.Ratio,
	Unit:    "%",
	Formula: airFormula + "; V / flow of the fan; what the road drives through the core is left out",
	Inputs:  append(carries(), in("Vf", "cooling.fan_flow", figures.Falling, airFlowBounds)),
	Source:  airBalance,
	Compute: func(a figures.Args) float64 { return airNeeded(a) / a.At("Vf") },
}

func core(d figures.Direction) []figures.Input {
	return []figures.Input{
		in("h", "cooling.core_height", d, coreBounds), in("w", "cooling.core_width", d, coreBounds),
	}
}

var faceSpeed = &figures.Figure{
	ID:      "cooling.face_speed",
	Title:   "speed of the air needed at the core's face",
	Symbol:  "v",
	Kind:    quantity.Speed,
	Unit:    "m/s",
	Formula: airFormula + "; v = V / (height × width of the core)",
	Inputs:  append(carries(), core(figures.Falling)...),
	Source:  airBalance,
	Compute: func(a figures.Args) float64 { return airNeeded(a) / (a.At("h") * a.At("w")) },
}

// Coverage is the share of a rectangle of the second size that one of the first
// covers, all four in one unit.
func Coverage(height, width, ofHeight, ofWidth float64) float64 {
	return height * width / (ofHeight * ofWidth)
}

var shroudCoverage = &figures.Figure{
	ID:      "cooling.shroud_coverage",
	Title:   "part of the core that the shroud covers",
	Symbol:  "As/A",
	Kind:    quantity.Ratio,
	Unit:    "%",
	Formula: "(height × width of the shroud) / (height × width of the core)",
	Inputs: append(core(figures.Falling),
		in("hs", "cooling.shroud_height", figures.Rising, coreBounds),
		in("ws", "cooling.shroud_width", figures.Rising, coreBounds)),
	Source:  figures.Source{Title: "geometry", Basis: "physics"},
	Compute: func(a figures.Args) float64 { return Coverage(a.At("hs"), a.At("ws"), a.At("h"), a.At("w")) },
}

// FanCoverage is the share of a core that the circle of a fan sweeps, all three
// in one unit.
func FanCoverage(diameter, height, width float64) float64 {
	return math.Pi / 4 * diameter * diameter / (height * width)
}

var fanCoverage = &figures.Figure{
	ID:      "cooling.fan_coverage",
	Title:   "part of the core that the fan sweeps",
	Symbol:  "Af/A",
	Kind:    quantity.Ratio,
	Unit:    "%",
	Formula: "π/4·D² / (height × width of the core); without a shroud no other part of the core gets the fan's air",
	Inputs:  append(core(figures.Falling), fanDiameter(figures.Rising)),
	Source: figures.Source{
		Title: "circle of the fan against the face of the core",
		URL:   "https://www.speedwaymotors.com/the-toolbox/does-a-fan-shroud-make-a-difference/28863",
		Basis: "handbook",
	},
	Compute: func(a figures.Args) float64 { return FanCoverage(a.At("D"), a.At("h"), a.At("w")) },
}
