// Package electrical holds the figures of the cranking circuit, of circuits and
// their conductors and fuses, of the battery and of charging.
package electrical

import (
	"math"

	"trialfit/internal/figures"
)

// Figures returns every figure of the discipline.
func Figures() []*figures.Figure {
	return []*figures.Figure{
		crankingLoopResistance, crankingDrop, crankingDropShare,
		circuitResistance, voltageDrop, voltageDropShare,
		ampacity, ampacityUse, fuseFactor,
		ccaPerDisplacement, ccaMargin,
		continuousLoad, chargingReserveIdle, chargingUse,
		alternatorSpeedIdle, alternatorCutInMargin,
	}
}

const rpm = 2 * math.Pi / 60 // rad/s

// Bounds of vehicle electrics, and nothing that is only a slip of the unit.
var (
	temperatureBounds = figures.Bounds{Low: 213.15, High: 473.15}         // K: −60 to 200 °C
	conductorBounds   = figures.Bounds{Low: 0.2e-6, High: 400e-6}         // m² of copper
	lengthBounds      = figures.Bounds{Low: 0.01, High: 100}              // m
	contactBounds     = figures.Bounds{Low: 0, High: 0.1}                 // Ω
	parallelBounds    = figures.Bounds{Low: 1, High: 8}                   // cables side by side
	currentBounds     = figures.Bounds{Low: 0.001, High: 1_000}           // A in a circuit
	loadBounds        = figures.Bounds{Low: 0, High: 1_000}               // A of one consumer
	fuseBounds        = figures.Bounds{Low: 0.1, High: 1_000}             // A
	crankingBounds    = figures.Bounds{Low: 10, High: 5_000}              // A of starter or battery
	voltageBounds     = figures.Bounds{Low: 4, High: 60}                  // V of the system
	displacementBound = figures.Bounds{Low: 0.05e-3, High: 30e-3}         // m³
	alternatorBounds  = figures.Bounds{Low: 1, High: 1_000}               // A
	idleBounds        = figures.Bounds{Low: 200 * rpm, High: 3_000 * rpm} // rad/s
	pulleyBounds      = figures.Bounds{Low: 0.02, High: 0.6}              // m
	cutInBounds       = figures.Bounds{Low: 100 * rpm, High: 8_000 * rpm} // rad/s
)
