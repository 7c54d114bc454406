package shafts

import (
	"trialfit/internal/figures"
	"trialfit/internal/quantity"
)

// angleRows is the largest working angle in degrees that makers of joints print
// for a shaft speed in rpm. It falls as one over the speed, as it must where the
// acceleration of the shaft's own inertia, ω²·θ², is what limits it: about
// 1000 rad/s² in every row from 1500 to 3500 rpm, less above.
var angleRows = []struct{ speed, angle float64 }{
	{1500, 11.5}, {2000, 8 + 40.0/60}, {2500, 7}, {3000, 5 + 50.0/60},
	{3500, 5.0}, {4000, 4.2}, {4500, 3.7}, {5000, 3.2},
}

// AngleLimit is the largest working angle in rad at a shaft speed in rad/s, by the
// makers' table: between its rows speed × angle runs straight, below 1500 rpm the
// angle stays at 11.5°. Above 5000 rpm, where an engine that revs or an overdrive
// takes a shaft and no maker prints a row, the acceleration of the last row is kept.
func AngleLimit(speed float64) float64 {
	n := speed / rpm
	low := angleRows[0]
	if n <= low.speed {
		return low.angle * degree
	}
	for _, high := range angleRows[1:] {
		if n <= high.speed {
			share := (n - low.speed) / (high.speed - low.speed)
			product := low.speed*low.angle + share*(high.speed*high.angle-low.speed*low.angle)
			return product / n * degree
		}
		low = high
	}
	return low.angle * low.speed / n * degree
}

var limitSource = figures.Source{
	Title: "power take-off owner's manual, joint operating angles up to 3000 rpm; above by the guide at spicerparts.com",
	URL:   "https://manualarchiveguide.com/manuals/Parker-892-Series-Owner-s-Manual-4054751?page=9",
	Basis: "manufacturer",
}

// tabled holds where the makers' table, kept up above its end, says something
// of a propeller shaft.
var tabled = []figures.Condition{{Figure: speed, Valid: figures.Bounds{Low: 0, High: 9000 * rpm}}}

const limitFormula = "θ / θmax, θmax by the shaft's speed n: 11.5° to 1500 rpm, 8.67° at 2000, 7° at 2500, 5.83° at 3000, 5° at 3500, 4.2° at 4000, 3.7° at 4500, 3.2° at 5000, above that 16000°·rpm/n; " + speedFormula

var angleDrivingUse = &figures.Figure{
	ID:         "shafts.angle_driving_end_use",
	Title:      "joint angle at the gearbox or transfer case against what the shaft's speed allows",
	Symbol:     "θ1/θmax",
	Kind:       quantity.Ratio,
	Unit:       "%",
	Per:        perShaft,
	Formula:    limitFormula,
	Inputs:     append(drivingInputs(), speedInputs()...),
	Conditions: tabled,
	Source:     limitSource,
	Compute:    func(a figures.Args) float64 { return drivingAngle(a) / AngleLimit(speedOf(a)) },
}

var angleDrivenUse = &figures.Figure{
	ID:         "shafts.angle_driven_end_use",
	Title:      "joint angle at the axle against what the shaft's speed allows",
	Symbol:     "θ2/θmax",
	Kind:       quantity.Ratio,
	Unit:       "%",
	Per:        perShaft,
	Formula:    limitFormula,
	Inputs:     append(drivenInputs(), speedInputs()...),
	Conditions: tabled,
	Source:     limitSource,
	Compute:    func(a figures.Args) float64 { return drivenAngle(a) / AngleLimit(speedOf(a)) },
}
