package mass

import (
	"trialfit/internal/figures"
	"trialfit/internal/quantity"
)

// StaticStability is the static stability factor: the sideways acceleration, in
// g, at which a rigid vehicle tips, from its track and the height of its centre
// of gravity in one unit.
func StaticStability(track, height float64) float64 { return track / (2 * height) }

var stabilitySource = figures.Source{
	Title: "static stability factor, one half of the track by the height of the centre of gravity",
	URL:   "http://www.nhtsa.dot.gov/cars/rules/rulings/Rollover/Chapt05.html",
	Basis: "standard",
}

var (
	trackBounds = figures.Bounds{Low: 0.5, High: 3} // m
	// tippable are the heights for which a factor makes sense, in m.
	tippable = figures.Bounds{Low: 0.1, High: 5}
)

func tracks(d figures.Direction) []figures.Input {
	return []figures.Input{
		{Name: "tf", Path: "chassis.track_front", Direction: d, Valid: trackBounds},
		{Name: "tr", Path: "chassis.track_rear", Direction: d, Valid: trackBounds},
	}
}

var (
	stabilityBefore = stabilityOf("mass.static_stability_before", "static stability factor as found", cgHeightBefore,
		turned(heightBeforeInputs), nil)
	stability = stabilityOf("mass.static_stability", "static stability factor, unladen", cgHeight,
		heightInputs(false, true), total)
	stabilityLaden = stabilityOf("mass.static_stability_laden", "static stability factor, laden", cgHeightLaden,
		heightInputs(true, true), totalLaden)
)

// stabilityOf declares the factor of a vehicle with its centre of gravity at a
// height; lower are the inputs of that height, each moving the factor.
func stabilityOf(id, title string, height *figures.Figure, lower []figures.Input, weighs *figures.Figure) *figures.Figure {
	f := &figures.Figure{
		ID:      id,
		Title:   title,
		Symbol:  "SSF",
		Kind:    quantity.Ratio,
		Formula: "SSF = (tf + tr) / (4·" + height.Symbol + "), the mean track by twice the height; " + height.Formula,
		Inputs:  append(tracks(figures.Rising), lower...),
		Source:  stabilitySource,
		Compute: func(a figures.Args) float64 {
			return StaticStability((a.At("tf")+a.At("tr"))/2, height.Compute(a))
		},
	}
	if weighs != nil {
		f.Conditions = append(f.Conditions, figures.Condition{Figure: weighs, Valid: totalBounds})
	}
	f.Conditions = append(f.Conditions, figures.Condition{Figure: height, Valid: tippable})
	return f
}

// turned returns inputs with the opposite directions.
func turned(inputs []figures.Input) []figures.Input {
	list := make([]figures.Input, len(inputs))
	for i, in := range inputs {
		in.Direction = opposite(in.Direction)
		list[i] = in
	}
	return list
}
