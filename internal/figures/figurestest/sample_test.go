package figurestest

import (
	"math"
	"slices"
	"testing"

	"trialfit/internal/figures"
)

func input(name, path string, direction figures.Direction) figures.Input {
	return figures.Input{Name: name, Path: path, Direction: direction}
}

func bounded(in figures.Input, low, high float64) figures.Input {
	in.Valid = figures.Bounds{Low: low, High: high}
	return in
}

func column(f func(m, x []float64) float64) func(figures.Args) float64 {
	return func(a figures.Args) float64 { return f(a.Column("m"), a.Column("x")) }
}

// valleys is lowest where both x and y are 1, and low where both are 0: from
// there moving one of them alone leads uphill.
func valleys(a figures.Args) float64 {
	x, y := a.At("x"), a.At("y")
	return x + y - 3*x*y
}

func saddle(x, y figures.Direction) []figures.Input {
	return []figures.Input{bounded(input("x", "x", x), 0, 1), bounded(input("y", "y", y), 0, 1)}
}

// A figure with a wrong direction must not slip through.
func TestSampleNotices(t *testing.T) {
	for _, f := range []*figures.Figure{
		{
			ID:      "wrong.ends",
			Inputs:  []figures.Input{bounded(input("x", "x", figures.Rising), 0, 1)},
			Compute: func(a figures.Args) float64 { return a.At("x") * (1 - a.At("x")) },
		}, {
			ID:      "wrong.way",
			Inputs:  []figures.Input{input("x", "x", figures.Falling), input("y", "y", figures.Rising)},
			Compute: func(a figures.Args) float64 { return a.At("x") * a.At("y") },
		}, {
			ID:     "wrong.column",
			Inputs: []figures.Input{input("m", "masses.*.m", figures.Rising), bounded(input("x", "masses.*.x", figures.Rising), -1, 1)},
			Compute: column(func(m, x []float64) float64 {
				sum := 0.0
				for i := range m {
					sum += m[i] * x[i]
				}
				return sum
			}),
		}, {
			ID:      "wrong.turn",
			Inputs:  []figures.Input{bounded(input("x", "x", figures.Ends), 0, 1)},
			Compute: func(a figures.Args) float64 { return a.At("x") * (1 - a.At("x")) },
		}, {
			ID:      "wrong.valley",
			Inputs:  saddle(figures.Ends, figures.Ends),
			Compute: valleys,
		},
	} {
		if sample(f, 1000) == nil {
			t.Errorf("%s: its wrong direction went unnoticed", f.ID)
		}
	}
}

// Figures of every shape the engine knows; none may leave its range.
func TestSample(t *testing.T) {
	zero := 0.0
	nonEmpty := func(in figures.Input) figures.Input { in.NonEmpty = true; return in }
	choice := input("k", "kind", figures.Either)
	choice.Choices = map[string]float64{"steel": 1, "copper": 2}
	choice.WhenNone = &zero

	for _, f := range []*figures.Figure{
		{
			ID:      "sample.difference",
			Inputs:  []figures.Input{input("x", "x", figures.Either), input("y", "y", figures.Either)},
			Compute: func(a figures.Args) float64 { return math.Abs(a.At("x") - a.At("y")) },
		}, {
			ID:      "sample.wide",
			Inputs:  []figures.Input{bounded(input("x", "x", figures.Rising), 1e-6, 1e6), bounded(input("y", "y", figures.Falling), 1, math.Inf(1))},
			Compute: func(a figures.Args) float64 { return math.Sqrt(a.At("x")) / a.At("y") },
		}, {
			ID:      "sample.words",
			Inputs:  []figures.Input{choice, bounded(input("x", "x", figures.Either), -2, 3)},
			Compute: func(a figures.Args) float64 { return a.At("k") * a.At("x") * (1 - a.At("x")) },
		}, {
			ID:  "sample.column",
			Per: "axles.*.wheels",
			Inputs: []figures.Input{
				input("s", "axles.*.share", figures.Rising),
				input("w", "axles.*.wheels.*.load", figures.Either),
				input("m", "axles.*.wheels.*.studs.*.m", figures.Either),
				bounded(input("x", "axles.*.wheels.*.studs.*.x", figures.Either), -3, 2),
			},
			Compute: func(a figures.Args) float64 {
				sum := a.At("s") * a.At("w")
				for i, m := range a.Column("m") {
					sum += m * a.Column("x")[i]
				}
				return sum
			},
		}, {
			ID:     "sample.mean",
			Inputs: []figures.Input{nonEmpty(input("m", "masses.*.m", figures.Either)), bounded(input("x", "masses.*.x", figures.Rising), -1, 4)},
			Compute: column(func(m, x []float64) float64 {
				moment, total := 0.0, 0.0
				for i := range m {
					moment, total = moment+m[i]*x[i], total+m[i]
				}
				return moment / total
			}),
		}, {
			ID:     "sample.shift",
			Inputs: []figures.Input{bounded(input("L", "wheelbase", figures.Pivot), 1, 10), input("m", "masses.*.m", figures.Ends), bounded(input("x", "masses.*.x", figures.Falling), -3, 15)},
			Compute: func(a figures.Args) float64 {
				sum := 0.0
				for i, m := range a.Column("m") {
					sum += m * (1 - a.Column("x")[i]/a.At("L"))
				}
				return sum
			},
		}, {
			ID:      "sample.valleys",
			Inputs:  saddle(figures.Pivot, figures.Ends),
			Compute: valleys,
		}, {
			ID:      "sample.search with ends",
			Inputs:  append(saddle(figures.Pivot, figures.Ends), bounded(input("z", "z", figures.Either), -1, 2)),
			Compute: func(a figures.Args) float64 { return valleys(a) * a.At("z") * (1 - a.At("z")) },
		}, {
			ID:      "sample.spread",
			Inputs:  []figures.Input{nonEmpty(input("m", "loads.*.m", figures.Either)), input("x", "loads.*.m", figures.Either)},
			Compute: column(func(m, x []float64) float64 { return slices.Max(m) - slices.Min(x) }),
		}, {
			ID:     "sample.unequal",
			Inputs: []figures.Input{input("m", "loads.*.m", figures.Either), bounded(input("x", "loads.*.x", figures.Either), -1, 1)},
			Compute: column(func(m, x []float64) float64 {
				y := 0.0
				for i := range m {
					y += math.Sqrt(m[i]*m[i] + x[i]*x[i]*float64(i))
				}
				return y
			}),
		},
	} {
		t.Run(f.ID, func(t *testing.T) { Sample(t, f, 5000) })
	}
}

// Bounds that keep nothing out must not slip through.
func TestRefuses(t *testing.T) {
	f := &figures.Figure{
		ID:      "wide.open",
		Inputs:  []figures.Input{bounded(input("x", "x", figures.Rising), 1, 1e12), input("m", "masses.*.m", figures.Rising)},
		Compute: func(a figures.Args) float64 { return a.At("x") },
	}
	if refuses(f) == nil {
		t.Error("bounds of 1e12 went unnoticed")
	}
	f.Inputs[0].Valid.High = 100
	if err := refuses(f); err != nil {
		t.Error(err)
	}
}
