// Package fittings holds the figures of chains from a port to a sender or hose.
//
// Of two threads that meet in a joint: how far they are apart in diameter and in
// pitch. Both are zero for threads of one size; small values tell of threads that
// start by hand and then leak. And how far a joint is made up. Of a whole chain:
// the bore that is left, and how far a probe stands in the liquid.
package fittings

import (
	"trialfit/internal/figures"
	"trialfit/internal/quantity"
	"trialfit/internal/thread"
)

// Figures returns every figure of the discipline.
func Figures() []*figures.Figure {
	return []*figures.Figure{
		diameterGap, pitchError,
		engagement, handTightTurns, wrenchTurns,
		throughBore, boreUse, wettedDepth, wettedMargin,
	}
}

const joints = "fittings.*.joints"

// EngagedThreads is the number of threads over which the error of pitch is
// taken, a usual engagement of a small pipe thread.
const EngagedThreads = 6

// pair declares a dimension of the thread nearer the port and of the one that
// is screwed onto it.
func pair(dimension string, valid figures.Bounds) []figures.Input {
	return []figures.Input{
		{Name: "inner", Path: joints + ".*.inner." + dimension, Valid: valid},
		{Name: "outer", Path: joints + ".*.outer." + dimension, Valid: valid},
	}
}

// DiameterGap is the difference of two basic major diameters, never negative,
// all in m.
func DiameterGap(inner, outer float64) float64 {
	return thread.Gap(thread.Thread{Major: inner}, thread.Thread{Major: outer})
}

var diameterGap = &figures.Figure{
	ID:      "fittings.diameter_gap",
	Title:   "difference of the major diameters in a joint",
	Symbol:  "ΔD",
	Kind:    quantity.Length,
	Unit:    "mm",
	Per:     joints,
	Formula: "ΔD = |D of the outer thread − D of the inner thread|, basic diameters",
	Inputs:  pair("major", figures.Bounds{Low: 0.001, High: 0.3}),
	Source: figures.Source{
		Title: "basic dimensions of ASME B1.20.1, as on the page named, and of the other thread standards",
		URL:   "https://www.unifiedalloys.com/p/pipe-threads/",
		Basis: "standard",
	},
	Compute: func(a figures.Args) float64 { return DiameterGap(a.At("inner"), a.At("outer")) },
}

// PitchError is how far the flanks of two threads with pitches in m have run
// apart over EngagedThreads threads, in m.
func PitchError(inner, outer float64) float64 {
	return thread.PitchError(thread.Thread{Pitch: inner}, thread.Thread{Pitch: outer}, EngagedThreads)
}

var pitchError = &figures.Figure{
	ID:      "fittings.pitch_error",
	Title:   "error of pitch over six threads of a joint",
	Symbol:  "Δp6",
	Kind:    quantity.Length,
	Unit:    "mm",
	Per:     joints,
	Formula: "Δp6 = 6 × |pitch of the outer thread − pitch of the inner thread|",
	Inputs:  pair("pitch", pitchBounds),
	Source: figures.Source{
		Title: "geometry of screw threads: the difference of pitch adds up from thread to thread",
		Basis: "physics",
	},
	Compute: func(a figures.Args) float64 { return PitchError(a.At("inner"), a.At("outer")) },
}
