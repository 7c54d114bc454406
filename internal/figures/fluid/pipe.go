package fluid

import "math"

// Roughness is that of clean commercial steel pipe in m, by the Moody chart.
const Roughness = 0.045e-3

// PipeArea is the area in m² of a round bore in m.
func PipeArea(bore float64) float64 { return math.Pi / 4 * bore * bore }

// PipeSpeed is the mean speed in m/s of a flow in m³/s in a round bore in m.
func PipeSpeed(flow, bore float64) float64 { return flow / PipeArea(bore) }

// Reynolds is the Reynolds number of a mass flow in kg/s in a round bore in m,
// with a dynamic viscosity in Pa·s.
func Reynolds(massFlow, bore, viscosity float64) float64 {
	return 4 * massFlow / (math.Pi * bore * viscosity)
}

// Friction is the Darcy friction factor of a round pipe from its Reynolds
// number and its roughness over its bore, laminar and turbulent, by Churchill
// (1977); see https://www.civilengineeringhandbook.tk/fluid-mechanics/info-qrw.html.
func Friction(reynolds, roughness float64) float64 {
	a := math.Pow(2.457*math.Log(1/(math.Pow(7/reynolds, 0.9)+0.27*roughness)), 16)
	b := math.Pow(37530/reynolds, 16)
	return 8 * math.Pow(math.Pow(8/reynolds, 12)+math.Pow(a+b, -1.5), 1.0/12)
}

// PipeDrop is the pressure in Pa that a pipe takes, from its friction factor,
// its length and bore in one unit, the density in kg/m³ and the speed in m/s of
// what flows (Darcy and Weisbach).
func PipeDrop(friction, length, bore, density, speed float64) float64 {
	return friction * length / bore * DynamicPressure(density, speed)
}

// DynamicPressure is ρv²/2 in Pa from a density in kg/m³ and a speed in m/s.
func DynamicPressure(density, speed float64) float64 { return density * speed * speed / 2 }

// Widening is the loss coefficient of a sudden step from a bore to a wider one,
// on the dynamic pressure in the narrower; 0 where the second is not wider
// (Borda and Carnot).
func Widening(bore, wider float64) float64 {
	share := 1 - min(1, bore*bore/(wider*wider))
	return share * share
}

// Narrowing is the loss coefficient of a sudden step from a bore to a narrower
// one, on the dynamic pressure in the narrower; 0 where the first is not wider.
func Narrowing(wider, bore float64) float64 { return 0.5 * (1 - min(1, bore*bore/(wider*wider))) }
