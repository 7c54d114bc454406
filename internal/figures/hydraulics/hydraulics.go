// Package hydraulics holds the figures of a clutch worked by fluid, of the
// vacuum or fluid that assists brakes, of power steering and of the parking
// brake.
package hydraulics

import (
	"math"

	"trialfit/internal/figures"
)

// Figures returns every figure of the discipline.
func Figures() []*figures.Figure {
	return []*figures.Figure{
		slaveTravel, releaseMargin, pedalForce, linePressure, linePressureUse,
		vacuumMargin, vacuumMarginAltitude, pumpDownTime, reserveStops, boosterAssist,
		brakeVolume, brakeVolumeUse,
		pumpFlowIdle, steeringFlowMargin, steeringPressureMargin, pumpSpeedUse, boosterFlowMargin, boosterPressureMargin,
		parkingForce, parkingTorque, parkingUse,
	}
}

const rpm = 2 * math.Pi / 60 // rad/s

// Bounds that several figures share, and nothing that is only a slip of the unit.
var (
	boreBounds     = figures.Bounds{Low: 0.005, High: 0.1}        // m
	travelBounds   = figures.Bounds{Low: 0.001, High: 0.2}        // m
	pressureBounds = figures.Bounds{Low: 100_000, High: 40e6}     // Pa above the surrounding air
	flowBounds     = figures.Bounds{Low: 0.1e-3 / 60, High: 1e-3} // m³/s: 0.1 to 60 L/min
)
