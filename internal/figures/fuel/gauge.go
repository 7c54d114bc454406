package fuel

import (
	"math"

	"trialfit/internal/figures"
	"trialfit/internal/quantity"
)

func gaugeEnds(d figures.Direction) []figures.Input {
	return []figures.Input{
		{Name: "e", Path: "fuel.gauge.empty", Direction: d, Valid: senderBounds},
		{Name: "f", Path: "fuel.gauge.full", Direction: d, Valid: senderBounds},
	}
}

var linear = figures.Source{
	Title: "gauge with an even scale: the pointer moves with the resistance of the sender",
	URL:   "https://100techdirect.com/blogs/faq-s/why-does-my-fuel-gauge-read-backwards",
	Basis: "common-practice",
}

var gaugeSpan = &figures.Figure{
	ID:      "fuel.gauge_span",
	Title:   "span of the fuel gauge",
	Symbol:  "ΔR",
	Kind:    quantity.Resistance,
	Unit:    "Ω",
	Formula: "ΔR = |f − e|, f resistance at full, e at empty",
	Inputs:  gaugeEnds(figures.Either),
	Source:  linear,
	Compute: func(a figures.Args) float64 { return math.Abs(a.At("f") - a.At("e")) },
}

// Reading is the part of its scale that a gauge shows: 0 is empty, 1 is full,
// from the resistance of the sender and those the gauge takes for empty and for
// full, all in one unit.
func Reading(sender, empty, full float64) float64 { return (sender - empty) / (full - empty) }

// reading is what the gauge shows with the float at one end.
func reading(end, title string) *figures.Figure {
	return &figures.Figure{
		ID:      "fuel.gauge_reading_" + end,
		Title:   title,
		Symbol:  "x",
		Kind:    quantity.Ratio,
		Unit:    "%",
		Formula: "x = (s − e)/(f − e), s resistance of the sender with the tank " + end + ", e and f those at which the gauge shows empty and full",
		Inputs: append(gaugeEnds(figures.Pivot),
			figures.Input{Name: "s", Path: "fuel.sender." + end, Direction: figures.Ends, Valid: senderBounds}),
		Conditions: []figures.Condition{{Figure: gaugeSpan, Valid: figures.Bounds{Low: 5, High: 2_000}}},
		Source:     linear,
		Compute:    func(a figures.Args) float64 { return Reading(a.At("s"), a.At("e"), a.At("f")) },
	}
}

var (
	gaugeEmpty = reading("empty", "what the fuel gauge shows with the tank empty")
	gaugeFull  = reading("full", "what the fuel gauge shows with the tank full")
)
