// Package shafts holds the figures of propeller shafts: how fast they turn, the
// working angles of their joints and what those do to the speed behind them,
// how near they run to whirling, and how much of the slip is left.
//
// Every shaft has a driving end (gearbox or transfer case) and a driven end
// (axle, or the transfer case of a shaft that leads to it). Slopes are positive
// where a line falls, in plan where it runs to the right, on the way from the
// driving end to the driven end, so that front and rear shafts read alike.
package shafts

import (
	"math"

	"trialfit/internal/figures"
	"trialfit/internal/quantity"
)

// Figures returns every figure of the discipline.
func Figures() []*figures.Figure {
	return []*figures.Figure{
		speed, angleDriving, angleDriven, angleDifference, angleDrivingUse, angleDrivenUse,
		angleDroop, angleDroopUse, torsional, inertiaDrive, inertiaCoast,
		criticalSpeed, criticalUse, criticalHalf,
		slipLeftBump, slipLeftDroop, lengthChangeBump, lengthChangeDroop,
	}
}

const (
	perShaft = "shafts"
	degree   = math.Pi / 180    // rad
	rpm      = 2 * math.Pi / 60 // rad/s
)

// Bounds of propeller shafts, and nothing that is only a slip of the unit.
var (
	slopeBounds  = figures.Bounds{Low: -45 * degree, High: 45 * degree}
	lengthBounds = figures.Bounds{Low: 0.1, High: 4}                  // m, between joint centres
	travelBounds = figures.Bounds{Low: 0, High: 0.6}                  // m, of the axle
	engineBounds = figures.Bounds{Low: 200 * rpm, High: 10_000 * rpm} // rad/s
	gearBounds   = figures.Bounds{Low: 0.3, High: 20}                 // of a gearbox or transfer case
)

// behindTransferCase says which shafts turn with its output.
var behindTransferCase = map[string]float64{"rear-axle": 1, "centre-bearing": 1, "front-axle": 1, "transfer-case": 0}

// speedInputs give the speed of a shaft at governed speed in top gear.
func speedInputs() []figures.Input {
	direct := 1.0
	return []figures.Input{
		{Name: "ne", Path: "engine.governed_speed", Direction: figures.Rising, Valid: engineBounds},
		{Name: "ig", Path: "transmission.top", Direction: figures.Falling, Valid: gearBounds},
		{Name: "it", Path: "transfer_case.high", Direction: figures.Falling, Valid: gearBounds, WhenNone: &direct},
		{Name: "kt", Path: "shafts.*.drives", Choices: behindTransferCase},
	}
}

// Speed is the speed of a shaft in the unit of the engine's, from the ratio of
// the gear and of the transfer case, the latter where the shaft lies behind it.
func Speed(engine, gear, transfer float64, behind bool) float64 {
	if !behind {
		return engine / gear
	}
	return engine / (gear * transfer)
}

func speedOf(a figures.Args) float64 {
	return Speed(a.At("ne"), a.At("ig"), a.At("it"), a.At("kt") == 1)
}

const speedFormula = "n = ne/(ig·(1 + kt·(it − 1))), ne governed speed, ig top gear, it transfer case high, kt 1 behind the transfer case and 0 ahead of it"

var speed = &figures.Figure{
	ID:      "shafts.speed",
	Title:   "shaft speed at governed speed in top gear",
	Symbol:  "n",
	Kind:    quantity.RotationalSpeed,
	Unit:    "rpm",
	Per:     perShaft,
	Formula: speedFormula,
	Inputs:  speedInputs(),
	Source: figures.Source{
		Title: "gears in series; an overdrive turns the shaft faster than the engine",
		URL:   "https://www.mercurycougar.net/threads/rear-diff-question.393/",
		Basis: "physics",
	},
	Compute: speedOf,
}
