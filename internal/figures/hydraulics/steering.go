package hydraulics

import (
	"math"

	"trialfit/internal/figures"
	"trialfit/internal/quantity"
)

// PumpEfficiency is what a steering pump delivers of what its displacement says:
// 0.85 worn to 0.97 new (common practice).
const PumpEfficiency = 0.9

var (
	pumpDisplacements = figures.Bounds{Low: 1e-6, High: 100e-6}              // m³ for each turn
	pulleyBounds      = figures.Bounds{Low: 0.02, High: 0.6}                 // m
	idleBounds        = figures.Bounds{Low: 200 * rpm, High: 3_000 * rpm}    // rad/s
	governedBounds    = figures.Bounds{Low: 600 * rpm, High: 9_000 * rpm}    // rad/s
	pumpSpeeds        = figures.Bounds{Low: 1_000 * rpm, High: 20_000 * rpm} // rad/s
)

// PumpFlow is the flow in m³/s of a pump of a displacement in m³ for each turn
// at a speed in rad/s, with a volumetric efficiency.
func PumpFlow(displacement, speed, efficiency float64) float64 {
	return displacement * speed / (2 * math.Pi) * efficiency
}

// pumpDrive is an engine speed and the pulleys that pass it on to the pump.
func pumpDrive(speed string, valid figures.Bounds) []figures.Input {
	return []figures.Input{
		{Name: "n", Path: speed, Direction: figures.Rising, Valid: valid},
		{Name: "D", Path: "hydraulics.steering.crank_pulley", Direction: figures.Rising, Valid: pulleyBounds},
		{Name: "d", Path: "hydraulics.steering.pulley", Direction: figures.Falling, Valid: pulleyBounds},
	}
}

var flowInputs = append(pumpDrive("engine.idle_speed", idleBounds),
	figures.Input{Name: "q", Path: "hydraulics.steering.displacement", Direction: figures.Rising, Valid: pumpDisplacements})

const flowFormula = "Q = 0.9·q·n·D/d, q displacement for each turn, n idle speed in turns, D crank pulley, d pump pulley; 0.9 for leakage"

var positive = figures.Source{
	Title: "displacement for each turn times turns times volumetric efficiency",
	URL:   "https://machinecalc.pages.dev/hydraulic-pump-flow-hp-calculator",
	Basis: "physics",
}

func pumpSpeed(a figures.Args) float64 { return a.At("n") * a.At("D") / a.At("d") }

func flowAtIdle(a figures.Args) float64 { return PumpFlow(a.At("q"), pumpSpeed(a), PumpEfficiency) }

var pumpFlowIdle = &figures.Figure{
	ID:      "hydraulics.pump_flow_idle",
	Title:   "flow of the steering pump at idle",
	Symbol:  "Q",
	Kind:    quantity.VolumeFlow,
	Unit:    "L/min",
	Formula: flowFormula,
	Inputs:  flowInputs,
	Source:  positive,
	Compute: flowAtIdle,
}

// Margin is what there is against what is needed, both in one unit; 1 is just
// enough.
func Margin(has, needs float64) float64 { return has / needs }

// flowMargin holds the flow at idle against what somebody's maker asks for.
func flowMargin(id, title, need string) *figures.Figure {
	return &figures.Figure{
		ID:      "hydraulics." + id,
		Title:   title,
		Symbol:  "Q/Qn",
		Kind:    quantity.Ratio,
		Unit:    "%",
		Formula: "Q/Qn, Qn flow needed, " + flowFormula,
		Inputs: append(flowInputs[:4:4],
			figures.Input{Name: "Qn", Path: need, Direction: figures.Falling, Valid: flowBounds}),
		Source:  positive,
		Compute: func(a figures.Args) float64 { return Margin(flowAtIdle(a), a.At("Qn")) },
	}
}

// pressureMargin holds the relief valve against what somebody's maker asks for.
func pressureMargin(id, title, need string) *figures.Figure {
	return &figures.Figure{
		ID:      "hydraulics." + id,
		Title:   title,
		Symbol:  "p/pn",
		Kind:    quantity.Ratio,
		Unit:    "%",
		Formula: "p/pn, p relief pressure of the pump, pn pressure needed",
		Inputs: []figures.Input{
			{Name: "p", Path: "hydraulics.steering.relief_pressure", Direction: figures.Rising, Valid: pressureBounds},
			{Name: "pn", Path: need, Direction: figures.Falling, Valid: pressureBounds},
		},
		Source:  figures.Source{Title: "the need by the maker of the gear or booster", Basis: "manufacturer"},
		Compute: func(a figures.Args) float64 { return Margin(a.At("p"), a.At("pn")) },
	}
}

var (
	steeringFlowMargin = flowMargin("steering_flow_margin",
		"flow of the steering pump at idle against what the gear needs", "hydraulics.steering.flow_need")
	boosterFlowMargin = flowMargin("booster_flow_margin",
		"flow of the steering pump at idle against what the brake booster needs", "hydraulics.brakes.booster_flow")
	steeringPressureMargin = pressureMargin("steering_pressure_margin",
		"relief pressure against what the steering gear needs", "hydraulics.steering.pressure_need")
	boosterPressureMargin = pressureMargin("booster_pressure_margin",
		"relief pressure against what the brake booster needs", "hydraulics.brakes.booster_pressure")
)

var pumpSpeedUse = &figures.Figure{
	ID:      "hydraulics.pump_speed_use",
	Title:   "speed of the steering pump at governed engine speed against its limit",
	Symbol:  "np/np max",
	Kind:    quantity.Ratio,
	Unit:    "%",
	Formula: "n·D/d/np max, n governed speed, D crank pulley, d pump pulley, np max speed limit of the pump",
	Inputs: append(pumpDrive("engine.governed_speed", governedBounds),
		figures.Input{Name: "np max", Path: "hydraulics.steering.speed_limit", Direction: figures.Falling, Valid: pumpSpeeds}),
	Source:  figures.Source{Title: "belt drive without slip: speeds are inverse to the pitch diameters", Basis: "physics"},
	Compute: func(a figures.Args) float64 { return pumpSpeed(a) / a.At("np max") },
}
