package mounts

import (
	"math"

	"trialfit/internal/figures"
	"trialfit/internal/quantity"
)

// BounceFrequency is the natural frequency in Hz of a mass in kg on mounts with
// a stiffness in N/m together, undamped.
func BounceFrequency(mass, stiffness float64) float64 {
	return math.Sqrt(stiffness/mass) / (2 * math.Pi)
}

// BounceFrequencySettled is the natural frequency in Hz of what its own weight
// settles by a deflection in m, as far as the mounts are linear.
func BounceFrequencySettled(deflection float64) float64 {
	return math.Sqrt(gravity/deflection) / (2 * math.Pi)
}

// FiringFrequency is the frequency in Hz of the power strokes of a four-stroke
// engine at a speed in rad/s.
func FiringFrequency(speed, cylinders float64) float64 { return speed / (2 * math.Pi) * cylinders / 2 }

// Damping is that of rubber mounts, as a part of the critical (common practice).
const Damping = 0.05

// Transmission is the part of a shaking force that mounts pass on, from the
// frequency of the force over their natural frequency and their damping as a
// part of the critical. Above √2 it is less than 1, and falls.
func Transmission(ratio, damping float64) float64 {
	square, damped := ratio*ratio, 4*damping*damping*ratio*ratio
	return math.Sqrt((1 + damped) / ((1-square)*(1-square) + damped))
}

var (
	isolation = figures.Source{
		Title: "single mass on mounts; 15.76/√δ Hz for a settling δ in mm; damping of rubber by common practice",
		URL:   "https://newsletter.onedfrk.com/archive/0bf16181-b7d4-4d94-8571-054baa0b1336",
		Basis: "physics",
	}
	orders = figures.Source{
		Title: "engine orders of four-stroke engines: half of the cylinders fire in a turn",
		URL:   "http://www.diracdelta.co.uk/science/source/e/n/engine%20orders/source.html",
		Basis: "physics",
	}
)

const (
	bounceFormula  = "f = √((2·ke + kg)/m) / 2π, with ke of one engine mount"
	settledFormula = "f = √(g/δ) / 2π"
	firingFormula  = "fz = n/60·z/2, four-stroke"
)

func stiff(d figures.Direction) []figures.Input {
	heavier := figures.Falling
	if d == figures.Falling {
		heavier = figures.Rising
	}
	return []figures.Input{
		{Name: "m", Path: "frame.mounts.unit_mass", Direction: heavier, Valid: massBounds},
		{Name: "ke", Path: "frame.mounts.engine_rate", Direction: d, Valid: rateBounds},
		{Name: "kg", Path: "frame.mounts.gearbox_rate", Direction: d, Valid: rateBounds},
	}
}

func settling(d figures.Direction) []figures.Input {
	return []figures.Input{{Name: "δ", Path: "frame.mounts.settled", Direction: d, Valid: settledBounds}}
}

func idling(d figures.Direction) []figures.Input {
	return []figures.Input{
		{Name: "n", Path: "engine.idle_speed", Direction: d, Valid: idleBounds},
		{Name: "z", Path: "engine.cylinders", Direction: d, Valid: cylinders},
	}
}

func bouncing(a figures.Args) float64 {
	return BounceFrequency(a.At("m"), 2*a.At("ke")+a.At("kg"))
}

func settled(a figures.Args) float64 { return BounceFrequencySettled(a.At("δ")) }

func firingAtIdle(a figures.Args) float64 { return FiringFrequency(a.At("n"), a.At("z")) }

var bounce = &figures.Figure{
	ID:      "mounts.bounce_frequency",
	Title:   "natural frequency of the unit on its mounts, by their stiffness",
	Symbol:  "f",
	Kind:    quantity.Frequency,
	Unit:    "Hz",
	Formula: bounceFormula,
	Inputs:  stiff(figures.Rising),
	Source:  isolation,
	Compute: bouncing,
}

var bounceSettled = &figures.Figure{
	ID:      "mounts.bounce_frequency_settled",
	Title:   "natural frequency of the unit on its mounts, by how far they settled",
	Symbol:  "f",
	Kind:    quantity.Frequency,
	Unit:    "Hz",
	Formula: settledFormula,
	Inputs:  settling(figures.Falling),
	Source:  isolation,
	Compute: settled,
}

var firing = &figures.Figure{
	ID:      "mounts.firing_frequency_idle",
	Title:   "firing frequency at idle",
	Symbol:  "fz",
	Kind:    quantity.Frequency,
	Unit:    "Hz",
	Formula: firingFormula,
	Inputs:  idling(figures.Rising),
	Source:  orders,
	Compute: firingAtIdle,
}

var (
	idleRatio = ratioAtIdle("mounts.idle_ratio", "firing frequency at idle over the natural frequency by stiffness",
		bounceFormula, stiff(figures.Falling), bouncing)
	idleRatioSettled = ratioAtIdle("mounts.idle_ratio_settled", "firing frequency at idle over the natural frequency by settling",
		settledFormula, settling(figures.Rising), settled)
)

func ratioAtIdle(id, title, formula string, inputs []figures.Input, natural func(figures.Args) float64) *figures.Figure {
	return &figures.Figure{
		ID:      id,
		Title:   title,
		Symbol:  "fz/f",
		Kind:    quantity.Ratio,
		Formula: firingFormula + "; " + formula + "; fz / f",
		Inputs:  append(idling(figures.Rising), inputs...),
		Source:  isolation,
		Compute: func(a figures.Args) float64 { return firingAtIdle(a) / natural(a) },
	}
}

var (
	idleTransmission = transmissionAtIdle("mounts.idle_transmission", "share of the shaking that reaches the frame at idle, by stiffness",
		idleRatio, stiff(figures.Rising))
	idleTransmissionSettled = transmissionAtIdle("mounts.idle_transmission_settled", "share of the shaking that reaches the frame at idle, by settling",
		idleRatioSettled, settling(figures.Falling))
)

// above are ratios beyond the peak, where more is better.
var above = figures.Bounds{Low: 1.05, High: 1000}

func transmissionAtIdle(id, title string, ratio *figures.Figure, inputs []figures.Input) *figures.Figure {
	return &figures.Figure{
		ID:         id,
		Title:      title,
		Symbol:     "τ",
		Kind:       quantity.Ratio,
		Unit:       "%",
		Formula:    "τ = √((1 + (2·ζ·r)²) / ((1 − r²)² + (2·ζ·r)²)), with ζ = 0.05 for rubber and r = fz/f; " + ratio.Formula,
		Inputs:     append(idling(figures.Falling), inputs...),
		Conditions: []figures.Condition{{Figure: ratio, Valid: above}},
		Source:     isolation,
		Compute:    func(a figures.Args) float64 { return Transmission(ratio.Compute(a), Damping) },
	}
}
