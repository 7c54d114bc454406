package fittings

import (
	"trialfit/internal/figures"
	"trialfit/internal/quantity"
)

var (
	pitchBounds = figures.Bounds{Low: 0.0002, High: 0.01} // m
	turnBounds  = figures.Bounds{Low: 0.1, High: 40}
	handTights  = figures.Bounds{Low: 0.002, High: 0.1} // m
)

var turns = figures.Input{Name: "n", Path: joints + ".*.turns", Direction: figures.Rising, Valid: turnBounds}

func outerPitch(d figures.Direction) figures.Input {
	return figures.Input{Name: "p", Path: joints + ".*.outer.pitch", Direction: d, Valid: pitchBounds}
}

func outerHandTight(d figures.Direction) figures.Input {
	return figures.Input{Name: "L1", Path: joints + ".*.outer.hand_tight", Direction: d, Valid: handTights}
}

var handTight = figures.Source{
	Title: "hand-tight engagement of ASME B1.20.1, gauge length of ISO 7 from memory, as tabled in internal/thread",
	URL:   "https://nusil.avantorsciences.com/us/en/support/tech-articles/masterflex/standard-pipe-thread-fittings",
	Basis: "standard",
}

// Engagement is the length in m over which threads are engaged after so many
// turns at a pitch in m.
func Engagement(turns, pitch float64) float64 { return turns * pitch }

var engagement = &figures.Figure{
	ID:      "fittings.engagement",
	Title:   "length of thread engaged in a joint",
	Symbol:  "ℓe",
	Kind:    quantity.Length,
	Unit:    "mm",
	Per:     joints,
	Formula: "ℓe = n·p, n turns made, p pitch of the outer thread",
	Inputs:  []figures.Input{turns, outerPitch(figures.Rising)},
	Source:  figures.Source{Title: "geometry of screw threads: one pitch for each turn", Basis: "physics"},
	Compute: func(a figures.Args) float64 { return Engagement(a.At("n"), a.At("p")) },
}

// HandTightTurns is how many turns a tapered thread goes in by hand, from its
// hand-tight engagement and its pitch in m.
func HandTightTurns(engagement, pitch float64) float64 { return engagement / pitch }

var handTightTurns = &figures.Figure{
	ID:      "fittings.hand_tight_turns",
	Title:   "turns a tapered thread goes in by hand",
	Symbol:  "n1",
	Kind:    quantity.Ratio,
	Per:     joints,
	Formula: "n1 = L1/p, L1 hand-tight engagement, p pitch of the outer thread",
	Inputs:  []figures.Input{outerHandTight(figures.Rising), outerPitch(figures.Falling)},
	Source:  handTight,
	Compute: func(a figures.Args) float64 { return HandTightTurns(a.At("L1"), a.At("p")) },
}

var wrenchTurns = &figures.Figure{
	ID:      "fittings.wrench_turns",
	Title:   "turns of a tapered joint beyond hand-tight",
	Symbol:  "n − n1",
	Kind:    quantity.Ratio,
	Per:     joints,
	Formula: "n − L1/p, n turns made, L1 hand-tight engagement, p pitch of the outer thread",
	Inputs:  []figures.Input{turns, outerHandTight(figures.Falling), outerPitch(figures.Rising)},
	Source:  handTight,
	Compute: func(a figures.Args) float64 { return a.At("n") - HandTightTurns(a.At("L1"), a.At("p")) },
}
