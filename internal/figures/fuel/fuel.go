// Package fuel holds the figures of the way of the fuel from tank to engine:
// what is burnt, what the lift pump must bring, what its suction line takes,
// how far a tank leads and what the gauge makes of it.
package fuel

import "trialfit/internal/figures"

// Figures returns every figure of the discipline.
func Figures() []*figures.Figure {
	return []*figures.Figure{
		fullLoadBurn, cruiseBurn, cruiseConsumption, tankRange,
		supplyFlow, liftPumpUse, supplyVelocity,
		warm.reynolds, cold.reynolds, warm.suction, cold.suction, warm.use, cold.use,
		filterUse,
		gaugeSpan, gaugeEmpty, gaugeFull,
	}
}

const (
	hour = 3600.0 // s
	kWh  = 3.6e6  // J
	kmh  = 1 / 3.6
)

// Bounds of road vehicles, and nothing that is only a slip of the unit.
var (
	specificBounds    = figures.Bounds{Low: 0.15 / kWh, High: 0.6 / kWh}  // kg/J
	powerBounds       = figures.Bounds{Low: 1_000, High: 1_000_000}       // W
	densityBounds     = figures.Bounds{Low: 650, High: 950}               // kg/m³
	speedBounds       = figures.Bounds{Low: 10 * kmh, High: 250 * kmh}    // m/s
	capacityBounds    = figures.Bounds{Low: 1e-3, High: 2}                // m³
	consumptionBounds = figures.Bounds{Low: 1e-8, High: 200e-8}           // m³/m: 1 to 200 L/100 km
	returnBounds      = figures.Bounds{Low: 0, High: 1e-3 * 1_000 / hour} // m³/s
	deliveryBounds    = figures.Bounds{Low: 1e-3 / hour, High: 2 / hour}  // m³/s: 1 to 2000 L/h
	boreBounds        = figures.Bounds{Low: 0.003, High: 0.05}            // m
	lengthBounds      = figures.Bounds{Low: 0.05, High: 30}               // m
	liftBounds        = figures.Bounds{Low: -3, High: 3}                  // m
	viscosityBounds   = figures.Bounds{Low: 0.3e-6, High: 200e-6}         // m²/s
	suctionBounds     = figures.Bounds{Low: 1_000, High: 80_000}          // Pa
	ratingBounds      = figures.Bounds{Low: 0.5e-6, High: 500e-6}         // m
	senderBounds      = figures.Bounds{Low: 0, High: 2_000}               // Ω
)
