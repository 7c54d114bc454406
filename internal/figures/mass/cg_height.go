package mass

import (
	"math"

	"trialfit/internal/figures"
	"trialfit/internal/quantity"
)

// CGHeight is the height in m of the centre of gravity of a vehicle that weighs
// front and rear kg on its axles when level, and raised kg on the front axle
// when its rear wheels stand lift m higher than the front ones. Wheelbase and
// height of the wheel centres are in m; the suspension is locked.
func CGHeight(front, rear, raised, wheelbase, lift, wheel float64) float64 {
	cotangent := math.Sqrt(wheelbase*wheelbase-lift*lift) / lift
	return wheel + (raised-front)*wheelbase*cotangent/(front+rear)
}

// CGAmong is where the centre of gravity lies, in m on some axis, of a vehicle
// of a mass in kg with its own centre of gravity at, once items came on.
func CGAmong(mass, at float64, items []Item) float64 {
	moment := mass * at
	for _, i := range items {
		mass += i.Mass
		moment += i.Mass * i.X
	}
	return moment / mass
}

// raisedWeighing is where the height of the centre of gravity comes from.
var raisedWeighing = figures.Source{
	Title: "moments on a vehicle weighed level and with one axle raised, suspension locked",
	URL:   "https://openbooks.link/?p=9580",
	Basis: "physics",
}

const heightFormula = "h = r + (Fr − F)·L·√(L² − s²) / (s·W), with F and W as weighed level, Fr on the front axle with the rear raised by s"

// The sign of Fr − F says which way a mass at the rear, the wheelbase and the
// lift move the height.
func raised(lift, wheelbase figures.Direction) []figures.Input {
	return []figures.Input{
		{Name: "Fr", Path: "baseline.rear_raised.front_mass", Direction: figures.Rising, Valid: figures.Bounds{Low: 20, High: 20_000}},
		{Name: "s", Path: "baseline.rear_raised.lift", Direction: lift, Valid: figures.Bounds{Low: 0.05, High: 0.95}},
		{Name: "r", Path: "baseline.rear_raised.wheel_height", Direction: figures.Rising, Valid: figures.Bounds{Low: 0.1, High: 1}},
		{Name: "L", Path: "chassis.wheelbase", Direction: wheelbase, Valid: wheelbaseBounds},
	}
}

func heightBefore(a figures.Args) float64 {
	return CGHeight(frontWeighed(a), rearWeighed(a), a.At("Fr"), a.At("L"), a.At("s"), a.At("r"))
}

var heightBeforeInputs = join(
	corners("front", figures.Falling, figures.Falling),
	corners("rear", figures.Ends, figures.Ends),
	raised(figures.Ends, figures.Ends),
)

var cgHeightBefore = &figures.Figure{
	ID:      "mass.cg_height_before",
	Title:   "height of the centre of gravity as found",
	Symbol:  "h",
	Kind:    quantity.Length,
	Formula: heightFormula,
	Inputs:  heightBeforeInputs,
	Source:  raisedWeighing,
	Compute: heightBefore,
}

var (
	cgHeight      = height("mass.cg_height", "height of the centre of gravity, unladen", false)
	cgHeightLaden = height("mass.cg_height_laden", "height of the centre of gravity, laden", true)
)

// heightInputs declares what a height after the swap reads; it rises the way
// given with the weighing and the heights of masses.
func heightInputs(laden bool, falls bool) []figures.Input {
	list := join(
		corners("front", figures.Ends, figures.Ends),
		corners("rear", figures.Ends, figures.Ends),
		raised(figures.Pivot, figures.Pivot),
		masses("z", laden, figures.Ends, figures.Rising),
	)
	if falls {
		for i := range list {
			list[i].Direction = opposite(list[i].Direction)
		}
	}
	return list
}

func height(id, title string, laden bool) *figures.Figure {
	weighs, onIt := total, "goes in, less what comes out"
	if laden {
		weighs, onIt = totalLaden, "goes in and what is carried, less what comes out"
	}
	return &figures.Figure{
		ID:         id,
		Title:      title,
		Symbol:     "h'",
		Kind:       quantity.Length,
		Formula:    "h' = (W·h + Σ m·z) / (W + Σ m) over what " + onIt + "; " + heightFormula,
		Inputs:     heightInputs(laden, false),
		Conditions: []figures.Condition{{Figure: weighs, Valid: totalBounds}},
		Source:     raisedWeighing,
		Compute: func(a figures.Args) float64 {
			return CGAmong(frontWeighed(a)+rearWeighed(a), heightBefore(a), items(a, "z", laden))
		},
	}
}
