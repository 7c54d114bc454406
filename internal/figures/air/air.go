// Package air holds the figures of what the engine breathes: how much air,
// through which pipes, how compressed and how cooled, and what the altitude
// leaves of it. The pressures that an engine's maker limits, in the intake and
// in the exhaust, are here too.
package air

import (
	"trialfit/internal/figures"
	"trialfit/internal/quantity"
)

// Figures returns every figure of the discipline.
func Figures() []*figures.Figure {
	return []*figures.Figure{
		flowRated, flowTorque, cleanerUse, restrictionUse,
		ductSpeed, ductMach, chargePipeSpeed, chargePipeMach,
		pressureRatio, pressureRatioSite, compressorTemperature, compressorEfficiency,
		compressorRise, coolerEffectiveness, chargeRise, densityRatio,
		fuelRatioRated, fuelRatioTorque, excessRated, excessTorque,
		sitePressure, siteDensity, powerCorrection, powerLeft,
		brakePressureUse, backPressureUse,
	}
}

// Bounds of road engines, and nothing that is only a slip of the unit.
var (
	boostBounds       = figures.Bounds{Low: 0, High: 800_000}       // Pa above the surrounding air
	hotBounds         = figures.Bounds{Low: 223.15, High: 623.15}   // K: −50 to 350 °C
	airBounds         = figures.Bounds{Low: 223.15, High: 333.15}   // K: −50 to 60 °C
	brakeBounds       = figures.Bounds{Low: 1_000, High: 1_000_000} // Pa above the surrounding air
	backBounds        = figures.Bounds{Low: 10, High: 100_000}      // Pa
	restrictionBounds = figures.Bounds{Low: 1, High: 25_000}        // Pa
	lossBounds        = figures.Bounds{Low: 0, High: 100_000}       // Pa
	displacement      = figures.Bounds{Low: 0.1e-3, High: 0.03}     // m³
	speedBounds       = figures.Bounds{Low: 20, High: 1_000}        // rad/s: 190 to 9500 rpm
	fillingBounds     = figures.Bounds{Low: 0.3, High: 1.3}         // of the swept volume
	efficiencyBounds  = figures.Bounds{Low: 0.3, High: 0.9}         // of a compressor
	boreBounds        = figures.Bounds{Low: 0.015, High: 0.3}       // m
	flowBounds        = figures.Bounds{Low: 0.005, High: 3}         // m³/s
	powerBounds       = figures.Bounds{Low: 1_000, High: 1_500_000} // W
	torqueBounds      = figures.Bounds{Low: 5, High: 5_000}         // N·m
	fuelBounds        = figures.Bounds{Low: 1.5e-8, High: 2.5e-7}   // kg/J: 54 to 900 g/kWh
	altitudeBounds    = figures.Bounds{Low: -450, High: 6_000}      // m, from the lowest road to the highest
	testBounds        = figures.Bounds{Low: 50_000, High: 108_000}  // Pa
)

func in(name, path string, d figures.Direction, valid figures.Bounds) figures.Input {
	return figures.Input{Name: name, Path: path, Direction: d, Valid: valid}
}

// use is a pressure against the highest one that the engine's maker allows.
func use(id, title, at, limit string, valid figures.Bounds) *figures.Figure {
	return &figures.Figure{
		ID:      "air." + id,
		Title:   title,
		Symbol:  "p/p max",
		Kind:    quantity.Ratio,
		Unit:    "%",
		Formula: "pressure / highest pressure that the engine's maker allows",
		Inputs:  []figures.Input{in("p", at, figures.Rising, valid), in("p max", limit, figures.Falling, valid)},
		Source:  figures.Source{Title: "the engine maker's data sheet", Basis: "manufacturer"},
		Compute: func(a figures.Args) float64 { return Use(a.At("p"), a.At("p max")) },
	}
}

// Use is a pressure against its limit, both in one unit; 1 is all of it.
func Use(pressure, limit float64) float64 { return pressure / limit }

var (
	restrictionUse = use("restriction_use", "intake restriction against its limit",
		"intake.restriction", "intake.restriction_limit", restrictionBounds)
	brakePressureUse = use("brake_pressure_use", "exhaust brake pressure against its limit",
		"exhaust.brake.pressure", "exhaust.brake.pressure_limit", brakeBounds)
	backPressureUse = use("back_pressure_use", "exhaust back pressure against its limit",
		"exhaust.back_pressure", "exhaust.back_pressure_limit", backBounds)
)
