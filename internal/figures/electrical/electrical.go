// Package electrical holds the figures of the cranking circuit, of circuits and
// their conductors and fuses, of the battery, of preheating, of charging and of
// the alternator's belt.
package electrical

import (
	"math"

	"trialfit/internal/figures"
)

// Figures returns every figure of the discipline.
func Figures() []*figures.Figure {
	return []*figures.Figure{
		crankingLoopResistance, crankingDrop, crankingDropShare, crankingCableDrop, crankingContactDrop,
		circuitResistance, voltageDrop, voltageDropShare, voltageDropUse, conductorArea, conductorNeed,
		ampacity, ampacityUse, ampacityDerated, ampacityDeratedUse, conductorTemperature, insulationMargin, fuseFactor,
		ccaPerDisplacement, ccaMargin, reserveCharge, standbyTime,
		preheatCurrent, preheatCover, preheatEnergy, preheatShare, stopHoldCurrent, stopPullCurrent,
		continuousLoad, chargingReserveIdle, chargingUse, alternatorNeed, alternatorUse,
		alternatorSpeedIdle, alternatorCutInMargin, alternatorSpeedGoverned, alternatorSpeedUse,
		beltGap, beltWrap, beltLength, beltLengthError, beltMisalignment,
	}
}

const (
	rpm    = 2 * math.Pi / 60 // rad/s
	minute = 60.0             // s
)

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
	governedBounds    = figures.Bounds{Low: 600 * rpm, High: 9_000 * rpm} // rad/s
	rotorBounds       = figures.Bounds{Low: 1_000 * rpm, High: 30_000 * rpm}
	reserveBounds     = figures.Bounds{Low: 10 * minute, High: 3_000 * minute} // s at 25 A
	standbyBounds     = figures.Bounds{Low: 0.01, High: reserveCurrent}        // A
	heaterBounds      = figures.Bounds{Low: 50, High: 10_000}                  // W
	heaterTimeBounds  = figures.Bounds{Low: 0.5, High: 30 * minute}            // s
	coilBounds        = figures.Bounds{Low: 0.05, High: 1_000}                 // Ω
	centreBounds      = figures.Bounds{Low: 0.05, High: 2}                     // m
	beltBounds        = figures.Bounds{Low: 0.2, High: 6}                      // m
	offsetBounds      = figures.Bounds{Low: 0, High: 0.05}                     // m
)
