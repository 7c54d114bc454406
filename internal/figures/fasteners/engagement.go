package fasteners

import (
	"trialfit/internal/figures"
	"trialfit/internal/quantity"
)

// engaged is the thread engagement in diameters at which the bolt breaks before
// the threads strip (common practice): the height of a nut made for the bolt,
// or tapped metal.
var engaged = map[string]float64{"nut": 0.8, "steel": 1, "cast-iron": 1.5, "aluminium": 2}

// EngagementNeeded is the thread engagement in m that a bolt of a diameter in m
// needs in a nut, steel, cast-iron or aluminium; 0 for another word.
func EngagementNeeded(into string, diameter float64) float64 { return engaged[into] * diameter }

var stripping = figures.Source{
	Title: "rules of thumb for thread engagement: 0.8 d in a nut, 1 d in steel, 1.5 d in cast iron, 2 d in aluminium",
	URL:   "https://unanswered.io/guide/how-to-calculate-thread-depth",
	Basis: "common-practice",
}

var bites = []figures.Input{
	{Name: "le", Path: bolts + ".*.engagement", Direction: figures.Rising, Valid: lengthBounds},
	diameter(figures.Falling),
}

var engagement = &figures.Figure{
	ID:      "fasteners.engagement",
	Title:   "thread engagement in diameters",
	Symbol:  "le/d",
	Kind:    quantity.Ratio,
	Per:     bolts,
	Formula: "length of full thread that bites / nominal diameter",
	Inputs:  bites,
	Source:  stripping,
	Compute: func(a figures.Args) float64 { return a.At("le") / a.At("d") },
}

var engagementUse = &figures.Figure{
	ID:      "fasteners.engagement_share",
	Title:   "thread engagement against what the metal needs",
	Symbol:  "le/ln",
	Kind:    quantity.Ratio,
	Unit:    "%",
	Per:     bolts,
	Formula: "le/ln, with ln = 0.8·d in a nut, 1·d in steel, 1.5·d in cast iron, 2·d in aluminium",
	Inputs:  append(bites[:2:2], figures.Input{Name: "need", Path: bolts + ".*.into", Choices: engaged}),
	Source:  stripping,
	Compute: func(a figures.Args) float64 { return a.At("le") / (a.At("need") * a.At("d")) },
}
