package air

import (
	"math"

	"trialfit/internal/figures"
	"trialfit/internal/figures/fluid"
	"trialfit/internal/quantity"
)

// reference is the temperature in K of the air that an engine is rated in, and
// of its manifold where there is no charge air.
var reference = 298.15

// none is the boost of an engine without a compressor.
var none = 0.0

// charge are the inputs of the density in the manifold, and how they pull on
// what grows with it.
func charge(up, down figures.Direction) []figures.Input {
	boost := in("pb", "charge_air.boost", up, boostBounds)
	boost.WhenNone = &none
	manifold := in("T3", "charge_air.manifold_in", down, hotBounds)
	manifold.WhenNone = &reference
	return []figures.Input{boost, manifold}
}

func chargeDensity(a figures.Args) float64 {
	return fluid.AirDensity(fluid.Atmosphere+a.At("pb"), a.At("T3"))
}

// swept are the inputs of the volume that the cylinders take in.
func swept(up figures.Direction, speed string) []figures.Input {
	return []figures.Input{
		in("Vd", "engine.displacement", up, displacement),
		in("ηv", "intake.volumetric_efficiency", up, fillingBounds),
		in("n", speed, up, speedBounds),
	}
}

// RatedInputs are the inputs of RatedFlow; each end of them is the end of what
// grows with the flow.
func RatedInputs() []figures.Input {
	return append(swept(figures.Rising, "engine.rated_speed"), charge(figures.Rising, figures.Falling)...)
}

// RatedFlow is the air in kg/s that the engine breathes at rated speed.
func RatedFlow(a figures.Args) float64 {
	return EngineFlow(a.At("Vd"), a.At("n"), a.At("ηv"), chargeDensity(a))
}

// EngineFlow is the air in kg/s that a four-stroke engine breathes, from its
// displacement in m³, its speed in rad/s, its volumetric efficiency and the
// density in its manifold in kg/m³.
func EngineFlow(displacement, speed, efficiency, density float64) float64 {
	return efficiency * density * Swallowed(displacement, speed)
}

// Swallowed is the volume in m³/s that a four-stroke engine of a displacement in
// m³ sweeps at a speed in rad/s: once in two turns.
func Swallowed(displacement, speed float64) float64 { return displacement * speed / (4 * math.Pi) }

// FlowFormula is the formula of RatedFlow.
const FlowFormula = "ma = ηv·ρ3·Vd·n/2, ρ3 = (101.325 kPa + boost)/(287.05 J/(kg·K)·T3), T3 in the manifold; " +
	"without charge air 25 °C"

var breathing = figures.Source{
	Title: "air of a four-stroke engine: cid × rpm/3456 cubic feet a minute, by the ideal gas law",
	URL:   "http://www.gnttype.org/techarea/turbo/turboflow.html",
	Basis: "handbook",
}

func flow(id, title, speed string) *figures.Figure {
	return &figures.Figure{
		ID:      "air." + id,
		Title:   title,
		Symbol:  "ma",
		Kind:    quantity.MassFlow,
		Unit:    "kg/h",
		Formula: FlowFormula + "; at the highest boost",
		Inputs:  append(swept(figures.Rising, speed), charge(figures.Rising, figures.Falling)...),
		Source:  breathing,
		Compute: RatedFlow,
	}
}

var (
	flowRated  = flow("flow_rated", "air the engine breathes at rated speed", "engine.rated_speed")
	flowTorque = flow("flow_torque", "air the engine breathes at peak torque", "engine.torque_speed")
)

// inlet is the flow in m³/s before the engine, at 25 °C and sea level.
func inlet(a figures.Args) float64 {
	return RatedFlow(a) / fluid.AirDensity(fluid.Atmosphere, reference)
}

const inletFormula = FlowFormula + "; V = ma/ρ of air at 25 °C and 101.325 kPa"

var cleanerUse = &figures.Figure{
	ID:      "air.cleaner_use",
	Title:   "air the engine breathes against its air cleaner",
	Symbol:  "V/Vc",
	Kind:    quantity.Ratio,
	Unit:    "%",
	Formula: inletFormula + "; V / rated flow of the air cleaner",
	Inputs:  append(RatedInputs(), in("Vc", "intake.cleaner_flow", figures.Falling, flowBounds)),
	Source:  breathing,
	Compute: func(a figures.Args) float64 { return inlet(a) / a.At("Vc") },
}
