package lifting

import (
	"math"

	"trialfit/internal/figures"
	"trialfit/internal/quantity"
)

// Tilt is the angle in rad by which a load swings out of level when its centre
// of gravity lies offset off the plumb line and height below the point it
// swings from, in one unit.
func Tilt(offset, height float64) float64 { return math.Atan(offset / height) }

var pendulum = figures.Source{
	Title: "a hanging load turns until its centre of gravity is below the hook",
	URL:   "https://www.physics.purdue.edu/primelab/safety/Crane/Rigging/Rig-110.htm",
	Basis: "physics",
}

var offset = figures.Input{Name: "e", Path: lifts + ".*.cg_offset", Direction: figures.Rising, Valid: figures.Bounds{Low: -2, High: 2}}

var tilt = &figures.Figure{
	ID:      "lifting.tilt",
	Title:   "tilt of the load once it hangs, rear end down",
	Symbol:  "φ",
	Kind:    quantity.Angle,
	Unit:    "°",
	Per:     lifts,
	Formula: "φ = arctan(e/h), with e of the centre of gravity behind the plumb line and h below the hook",
	// A longer pendulum tilts less, to whichever side.
	Inputs: []figures.Input{offset, {Name: "h", Path: lifts + ".*.hook_above_cg", Direction: figures.Ends, Valid: heightBounds}},
	Source: pendulum,
	Compute: func(a figures.Args) float64 {
		return Tilt(a.At("e"), a.At("h"))
	},
}

// LevellerUse is the part of a leveller's travel to one side that it takes to
// bring the hook over a centre of gravity offset to either side, in one unit.
func LevellerUse(offset, travel float64) float64 { return math.Abs(offset) / travel }

var levellerUse = &figures.Figure{
	ID:      "lifting.leveller_use",
	Title:   "offset of the centre of gravity against the travel of the leveller",
	Symbol:  "e/s",
	Kind:    quantity.Ratio,
	Unit:    "%",
	Per:     lifts,
	Formula: "|e| / travel of the leveller to either side",
	Inputs: []figures.Input{
		{Name: "e", Path: offset.Path, Valid: offset.Valid},
		{Name: "s", Path: lifts + ".*.leveller_travel", Direction: figures.Falling, Valid: figures.Bounds{Low: 0.01, High: 1}},
	},
	Source:  pendulum,
	Compute: func(a figures.Args) float64 { return LevellerUse(a.At("e"), a.At("s")) },
}

// Clearance is what a hook at a height above the floor leaves between the load
// and what it must pass over, from the heights of tackle, load and obstacle, in
// one unit; it is negative when the load does not pass.
func Clearance(hook, tackle, load, obstacle float64) float64 { return hook - tackle - load - obstacle }

var clearance = &figures.Figure{
	ID:      "lifting.clearance",
	Title:   "clearance over what the load must pass, at full lift",
	Symbol:  "c",
	Kind:    quantity.Length,
	Per:     lifts,
	Formula: "c = hook height − tackle − depth of the load below its eyes − height to clear",
	Inputs: []figures.Input{
		{Name: "hook", Path: lifts + ".*.hook_height", Direction: figures.Rising, Valid: figures.Bounds{Low: 0.3, High: 8}},
		{Name: "tackle", Path: lifts + ".*.tackle_height", Direction: figures.Falling, Valid: figures.Bounds{Low: 0, High: 4}},
		{Name: "load", Path: lifts + ".*.load_depth", Direction: figures.Falling, Valid: figures.Bounds{Low: 0, High: 4}},
		{Name: "clear", Path: lifts + ".*.to_clear", Direction: figures.Falling, Valid: figures.Bounds{Low: 0, High: 4}},
	},
	Source: statics,
	Compute: func(a figures.Args) float64 {
		return Clearance(a.At("hook"), a.At("tackle"), a.At("load"), a.At("clear"))
	},
}
