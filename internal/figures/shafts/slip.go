package shafts

import (
	"math"

	"trialfit/internal/figures"
	"trialfit/internal/quantity"
)

// SlipLeft is what is left of the slip, from the longer and the shorter of a
// stop of the slip joint and the length that the suspension asks for. Negative
// where the shaft bottoms or pulls apart.
func SlipLeft(longer, shorter float64) float64 { return longer - shorter }

func length(name, path string, d figures.Direction) figures.Input {
	return figures.Input{Name: name, Path: "shafts.*." + path, Direction: d, Valid: lengthBounds}
}

var slip = figures.Source{Title: "lengths between joint centres, measured", Basis: "physics"}

var slipLeftBump = &figures.Figure{
	ID:      "shafts.slip_left_bump",
	Title:   "slip left before the shaft bottoms at full bump",
	Symbol:  "Δs",
	Kind:    quantity.Length,
	Per:     perShaft,
	Formula: "Δs = Lb − Lmin, the length at full bump less the shortest",
	Inputs:  []figures.Input{length("Lb", "slip.at_bump", figures.Rising), length("Lmin", "slip.shortest", figures.Falling)},
	Source:  slip,
	Compute: func(a figures.Args) float64 { return SlipLeft(a.At("Lb"), a.At("Lmin")) },
}

var slipLeftDroop = &figures.Figure{
	ID:      "shafts.slip_left_droop",
	Title:   "slip left before the splines lose their engagement at full droop",
	Symbol:  "Δs",
	Kind:    quantity.Length,
	Per:     perShaft,
	Formula: "Δs = Lmax − Ld, the longest length less that at full droop",
	Inputs:  []figures.Input{length("Lmax", "slip.longest", figures.Rising), length("Ld", "slip.at_droop", figures.Falling)},
	Source:  slip,
	Compute: func(a figures.Args) float64 { return SlipLeft(a.At("Lmax"), a.At("Ld")) },
}

// Moved is the length in m and the line of a shaft whose driven end sinks
// straight down by a distance in m, negative where it rises.
func Moved(length float64, shaft Line, sinks float64) (float64, Line) {
	ahead, right, down := shaft.vector()
	unit := length / math.Hypot(math.Hypot(ahead, right), down)
	fall := unit*down + sinks
	run := unit * ahead
	return math.Hypot(math.Hypot(run, unit*right), fall), Line{math.Atan(fall / run), shaft.Plan}
}

func travelled(name, path string) []figures.Input {
	return append(lineInputs("s", "shaft"),
		figures.Input{Name: "L", Path: "shafts.*.length", Valid: lengthBounds},
		figures.Input{Name: name, Path: "shafts.*.travel." + path, Valid: travelBounds})
}

var geometry = figures.Source{
	Title: "geometry: the pinion moves straight up and down; springs and arms also swing it lengthways, which the measured slip shows",
	Basis: "physics",
}

var lengthChangeBump = &figures.Figure{
	ID:      "shafts.length_change_bump",
	Title:   "change of the shaft's length from settled to full bump",
	Symbol:  "ΔL",
	Kind:    quantity.Length,
	Per:     perShaft,
	Formula: "ΔL = √(L² − 2·L·b·s + b²) − L, b the travel, s = tan βs/√(1 + (tan βs)² + (tan γs)²); negative where it shortens",
	Inputs:  travelled("b", "bump"),
	Source:  geometry,
	Compute: func(a figures.Args) float64 {
		moved, _ := Moved(a.At("L"), line(a, "s"), -a.At("b"))
		return moved - a.At("L")
	},
}

var lengthChangeDroop = &figures.Figure{
	ID:      "shafts.length_change_droop",
	Title:   "change of the shaft's length from settled to full droop",
	Symbol:  "ΔL",
	Kind:    quantity.Length,
	Per:     perShaft,
	Formula: "ΔL = √(L² + 2·L·b·s + b²) − L, b the travel, s = tan βs/√(1 + (tan βs)² + (tan γs)²)",
	Inputs:  travelled("b", "droop"),
	Source:  geometry,
	Compute: func(a figures.Args) float64 {
		moved, _ := Moved(a.At("L"), line(a, "s"), a.At("b"))
		return moved - a.At("L")
	},
}

func droopAngle(a figures.Args) float64 {
	_, hanging := Moved(a.At("L"), line(a, "s"), a.At("b"))
	return Angle(line(a, "1"), hanging)
}

const droopFormula = "angle between the driving flange and the shaft with its driven end lower by the travel to full droop"

var angleDroop = &figures.Figure{
	ID:      "shafts.angle_droop",
	Title:   "angle of the joint at the gearbox or transfer case at full droop",
	Symbol:  "θd",
	Kind:    quantity.Angle,
	Unit:    "°",
	Per:     perShaft,
	Formula: droopFormula,
	Inputs:  append(travelled("b", "droop"), lineInputs("1", "driving")...),
	Source:  geometry,
	Compute: droopAngle,
}

var angleDroopUse = &figures.Figure{
	ID:      "shafts.angle_droop_use",
	Title:   "joint angle at full droop against the angle at which the joint binds",
	Symbol:  "θd/θb",
	Kind:    quantity.Ratio,
	Unit:    "%",
	Per:     perShaft,
	Formula: "θd / joint angle limit; θd = " + droopFormula,
	Inputs: append(append(travelled("b", "droop"), lineInputs("1", "driving")...), figures.Input{
		Name: "θb", Path: "shafts.*.joint_angle_limit", Direction: figures.Falling,
		Valid: figures.Bounds{Low: 5 * degree, High: 60 * degree},
	}),
	Source:  geometry,
	Compute: func(a figures.Args) float64 { return droopAngle(a) / a.At("θb") },
}
