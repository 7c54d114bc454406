package figures_test

import (
	"fmt"
	"math"
	"math/rand/v2"
	"slices"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"trialfit/internal/figures"
	"trialfit/internal/figures/figurestest"
)

// plane returns a figure of x and y, both left to the search.
func plane(f func(x, y float64) float64) *figures.Figure {
	return figure(func(a figures.Args) float64 { return f(a.At("x"), a.At("y")) },
		figures.Input{Name: "x", Path: "x"}, figures.Input{Name: "y", Path: "y"})
}

// The four operations and the dependency examples are those every text on
// interval analysis opens with (Moore, Kearfott and Cloud, Introduction to
// Interval Analysis, SIAM 2009; from memory). Each exact range is plain to see.
func TestIntervalArithmetic(t *testing.T) {
	between := figurestest.Between
	for _, c := range []struct {
		name      string
		f         func(x, y float64) float64
		x, y      figures.Leaf
		low, high float64
		tolerance float64
	}{
		{"sum", func(x, y float64) float64 { return x + y }, between(1, 2), between(-3, 5), -2, 7, 0},
		{"difference", func(x, y float64) float64 { return x - y }, between(1, 2), between(-3, 5), -4, 5, 0},
		{"product, one sign change", func(x, y float64) float64 { return x * y }, between(2, 4), between(-3, 5), -12, 20, 0},
		{"product, two sign changes", func(x, y float64) float64 { return x * y }, between(-1, 2), between(-3, 5), -6, 10, 0},
		{"product about the origin", func(x, y float64) float64 { return x * y }, between(-1, 1), between(-1, 1), -1, 1, 0},
		{"quotient", func(x, y float64) float64 { return x / y }, between(1, 2), between(4, 8), 0.125, 0.5, 0},
		{"distance of separate ranges", func(x, y float64) float64 { return math.Abs(x - y) }, between(0, 1), between(3, 7), 2, 7, 0},
		{"distance, minimum inside", func(x, y float64) float64 { return math.Abs(x - y) }, between(0, 4), between(3.3, 7), 0, 7, 1e-11},
		{"circle, minimum inside", func(x, y float64) float64 { return x*x + y*y }, between(-1, 3), between(-2, 1), 0, 13, 1e-11},
		{"ends that are points", func(x, y float64) float64 { return x + y }, between(2, 2), between(3, 3), 5, 5, 0},
		{"powers of the same x", func(x, y float64) float64 { return x * x * y }, between(-2, 1), between(1, 1), 0, 4, 1e-11},
		{"turning point close to an end", func(x, _ float64) float64 { return (x - 0.003) * (x - 0.003) }, between(0, 1), between(0, 0), 0, 0.994009, 1e-11},
		{"x(1-x), maximum at 1/2", func(x, _ float64) float64 { return x * (1 - x) }, between(0, 1), between(0, 0), 0, 0.25, 1e-15},
		{"x(1-x), maximum off the grid", func(x, _ float64) float64 { return x * (1 - x) }, between(0.1, 1.03), between(0, 0), 1.03 * (1 - 1.03), 0.25, 1e-15},
	} {
		t.Run(c.name, func(t *testing.T) {
			r := one(t, plane(c.f), leaves(map[string]figures.Leaf{"x": c.x, "y": c.y}))
			assert.InDelta(t, c.low, r.Low, c.tolerance)
			assert.InDelta(t, c.high, r.High, c.tolerance)
		})
	}
}

// Two inputs with one path move together: x - x is 0, not ±width.
func TestSharedInputsMoveTogether(t *testing.T) {
	f := figure(func(a figures.Args) float64 { return a.At("gross") - a.At("tare") },
		figures.Input{Name: "gross", Path: "x", Direction: figures.Rising},
		figures.Input{Name: "tare", Path: "x", Direction: figures.Falling},
	)
	r := one(t, f, leaves(map[string]figures.Leaf{"x": figurestest.Between(1, 5)}))
	assert.Zero(t, r.Low)
	assert.Zero(t, r.High)
	assert.Len(t, r.Inputs, 1)

	// The same through columns: Σx·x over one list, with ranges across zero.
	squares := figure(func(a figures.Args) float64 {
		sum := 0.0
		for i, x := range a.Column("x") {
			sum += x * a.Column("same")[i]
		}
		return sum
	},
		figures.Input{Name: "x", Path: "items.*.x"},
		figures.Input{Name: "same", Path: "items.*.x"},
	)
	r = one(t, squares, figurestest.Fixed{
		Leaves: map[string]figures.Leaf{"items.a.x": figurestest.Between(-1, 2), "items.b.x": figurestest.Between(-3, 1)},
		Lists:  map[string][]string{"items": {"a", "b"}},
	})
	assert.InDelta(t, 0, r.Low, 1e-11)
	assert.Equal(t, 13.0, r.High)
}

func TestDirections(t *testing.T) {
	f := figure(func(a figures.Args) float64 { return a.At("up")/a.At("down") + math.Abs(a.At("e")) },
		figures.Input{Name: "up", Path: "up", Direction: figures.Rising},
		figures.Input{Name: "down", Path: "down", Direction: figures.Falling},
		figures.Input{Name: "e", Path: "e"},
	)
	r := one(t, f, leaves(map[string]figures.Leaf{
		"up": figurestest.Between(4, 8), "down": figurestest.Between(2, 4), "e": figurestest.Between(-1, 0.5),
	}))
	assert.InDelta(t, 1, r.Low, 1e-12)
	assert.Equal(t, 5.0, r.High)
}

// Standard functions for global search with their published minima:
// six-hump camel https://rdrr.io/cran/gek/man/camel6.html,
// Branin http://www.sfu.ca/~ssurjano/branin.html,
// Hartmann 6 https://scikit-optimize.github.io/stable/modules/generated/skopt.benchmarks.hart6.html,
// Rosenbrock and Rastrigin https://docs.rs/crate/optimizer/latest/source/benches/test_functions.rs.
func TestPublishedMinima(t *testing.T) {
	for _, c := range []struct {
		name      string
		f         func(x []float64) float64
		box       [][2]float64
		low       float64
		tolerance float64
	}{
		{"six-hump camel", func(x []float64) float64 {
			a, b := x[0]*x[0], x[1]*x[1]
			return (4-2.1*a+a*a/3)*a + x[0]*x[1] + (4*b-4)*b
		}, [][2]float64{{-3, 3}, {-2, 2}}, -1.031628, 1e-6},
		{"Branin", func(x []float64) float64 {
			u := x[1] - 5.1/(4*math.Pi*math.Pi)*x[0]*x[0] + 5/math.Pi*x[0] - 6
			return u*u + 10*(1-1/(8*math.Pi))*math.Cos(x[0]) + 10
		}, [][2]float64{{-5, 10}, {0, 15}}, 0.397887, 1e-6},
		{"Rosenbrock", func(x []float64) float64 {
			return 100*math.Pow(x[1]-x[0]*x[0], 2) + math.Pow(1-x[0], 2)
		}, [][2]float64{{-2, 2}, {-1, 3}}, 0, 1e-6},
		{"Rastrigin", func(x []float64) float64 {
			sum := 10.0 * float64(len(x))
			for _, x := range x {
				sum += x*x - 10*math.Cos(2*math.Pi*x)
			}
			return sum
		}, [][2]float64{{-1.3, 2.1}, {-0.7, 1.9}, {-2.2, 1.1}, {-1.9, 1.2}}, 0, 1e-9},
		{"Hartmann 6", hartmann6, slices.Repeat([][2]float64{{0, 1}}, 6), -3.32237, 1e-5},
	} {
		t.Run(c.name, func(t *testing.T) {
			values := figurestest.Fixed{Leaves: map[string]figures.Leaf{}, Lists: map[string][]string{}}
			for i, b := range c.box {
				id := fmt.Sprint(i)
				values.Lists["items"] = append(values.Lists["items"], id)
				values.Leaves["items."+id+".x"] = figurestest.Between(b[0], b[1])
			}
			f := figure(func(a figures.Args) float64 { return c.f(a.Column("x")) },
				figures.Input{Name: "x", Path: "items.*.x"})
			assert.InDelta(t, c.low, one(t, f, values).Low, c.tolerance)
		})
	}
}

func hartmann6(x []float64) float64 {
	weight := []float64{1, 1.2, 3, 3.2}
	scale := [][]float64{{10, 3, 17, 3.5, 1.7, 8}, {0.05, 10, 17, 0.1, 8, 14}, {3, 3.5, 1.7, 10, 17, 8}, {17, 8, 0.05, 10, 0.1, 14}}
	centre := [][]float64{
		{0.1312, 0.1696, 0.5569, 0.0124, 0.8283, 0.5886}, {0.2329, 0.4135, 0.8307, 0.3736, 0.1004, 0.9991},
		{0.2348, 0.1451, 0.3522, 0.2883, 0.3047, 0.665}, {0.4047, 0.8828, 0.8732, 0.5743, 0.1091, 0.0381},
	}
	sum := 0.0
	for i := range weight {
		e := 0.0
		for j := range x {
			e += scale[i][j] * (x[j] - centre[i][j]) * (x[j] - centre[i][j])
		}
		sum -= weight[i] * math.Exp(-e)
	}
	return sum
}

// items makes a list of n items with random masses and arms, the arms on both
// sides of zero.
func items(n int, seed uint64) (values figurestest.Fixed, mass, arm []figures.Range) {
	random := rand.New(rand.NewPCG(seed, 0))
	values = figurestest.Fixed{Leaves: map[string]figures.Leaf{}, Lists: map[string][]string{}}
	for i := range n {
		id := fmt.Sprintf("item%d", i)
		m := 5 + 300*random.Float64()
		x := -1 + 4*random.Float64()
		mass = append(mass, figures.Range{Low: m, High: m * (1 + 0.2*random.Float64())})
		arm = append(arm, figures.Range{Low: x, High: x + 0.3*random.Float64()})
		values.Lists["masses"] = append(values.Lists["masses"], id)
		values.Leaves["masses."+id+".mass"] = figurestest.Between(mass[i].Low, mass[i].High)
		values.Leaves["masses."+id+".arm"] = figurestest.Between(arm[i].Low, arm[i].High)
	}
	return values, mass, arm
}

func moment(a figures.Args) float64 {
	sum := 0.0
	for i, m := range a.Column("m") {
		sum += m * a.Column("x")[i]
	}
	return sum
}

// Every term of Σm·x has its own leaves, so its extremes are sums of the
// extremes of the terms, each at one of four corners.
func TestLongColumnAgainstItsCorners(t *testing.T) {
	f := figure(moment, figures.Input{Name: "m", Path: "masses.*.mass"}, figures.Input{Name: "x", Path: "masses.*.arm"})
	for seed := range uint64(20) {
		values, mass, arm := items(30, seed)
		low, high := 0.0, 0.0
		for i, m := range mass {
			x := arm[i]
			corners := []float64{m.Low * x.Low, m.Low * x.High, m.High * x.Low, m.High * x.High}
			low += slices.Min(corners)
			high += slices.Max(corners)
		}
		r := one(t, f, values)
		assert.Equal(t, low, r.Low)
		assert.Equal(t, high, r.High)
	}
}

// centre is the centre of gravity Σm·x/Σm.
var centre = figure(func(a figures.Args) float64 { return moment(a) / total(a) },
	figures.Input{Name: "m", Path: "masses.*.mass", NonEmpty: true, Valid: figures.Bounds{Low: 1, High: 2000}},
	figures.Input{Name: "x", Path: "masses.*.arm", NonEmpty: true, Direction: figures.Rising, Valid: figures.Bounds{Low: -5, High: 10}},
)

// The range of a weighted mean with ranges for weights lies where the weights
// switch once from one end to the other, the items sorted by arm (Karnik and
// Mendel, Centroid of a type-2 fuzzy set, Information Sciences 132 (2001); from
// memory). Trying every switch point gives the exact answer.
func TestCentreOfGravityAgainstSwitchPoints(t *testing.T) {
	for seed := range uint64(20) {
		values, mass, arm := items(30, seed)
		weighted := func(at func(int) (m, x float64)) float64 {
			moment, total := 0.0, 0.0
			for i := range mass {
				m, x := at(i)
				moment, total = moment+m*x, total+m
			}
			return moment / total
		}
		low, high := math.Inf(1), math.Inf(-1)
		for k := range mass {
			low = min(low, weighted(func(i int) (float64, float64) {
				if arm[i].Low <= arm[k].Low {
					return mass[i].High, arm[i].Low
				}
				return mass[i].Low, arm[i].Low
			}))
			high = max(high, weighted(func(i int) (float64, float64) {
				if arm[i].High >= arm[k].High {
					return mass[i].High, arm[i].High
				}
				return mass[i].Low, arm[i].High
			}))
		}
		r := one(t, centre, values)
		assert.InDelta(t, low, r.Low, 1e-12)
		assert.InDelta(t, high, r.High, 1e-12)
	}
}

// share is the part of a vehicle's mass on its front axle, where masses were
// added: the figure that Ends and Pivot are made for.
var share = figure(func(a figures.Args) float64 {
	front, all := 400.0, 900.0
	for i, m := range a.Column("m") {
		front, all = front+m*(1-a.Column("x")[i]/a.At("L")), all+m
	}
	return front / all
},
	figures.Input{Name: "L", Path: "wheelbase", Direction: figures.Pivot},
	figures.Input{Name: "m", Path: "masses.*.mass", Direction: figures.Ends},
	figures.Input{Name: "x", Path: "masses.*.arm", Direction: figures.Falling},
)

// Every corner of the box is tried; the engine must find the same two.
func TestEndsAgainstAllCorners(t *testing.T) {
	const n = 5
	for seed := range uint64(20) {
		values, mass, arm := items(n, seed)
		wheelbase := figures.Range{Low: 2.5, High: 2.9}
		values.Leaves["wheelbase"] = figurestest.Between(wheelbase.Low, wheelbase.High)
		low, high := math.Inf(1), math.Inf(-1)
		end := func(r figures.Range, corner, bit int) float64 { return []float64{r.Low, r.High}[corner>>bit&1] }
		for corner := range 1 << (2*n + 1) {
			masses, arms := make([]float64, n), make([]float64, n)
			for i := range n {
				masses[i], arms[i] = end(mass[i], corner, i), end(arm[i], corner, n+i)
			}
			y := share.Compute(figures.NewArgs(
				map[string]float64{"L": end(wheelbase, corner, 2*n)},
				map[string][]float64{"m": masses, "x": arms}))
			low, high = min(low, y), max(high, y)
		}
		r := one(t, share, values)
		assert.Equal(t, low, r.Low)
		assert.Equal(t, high, r.High)
	}
}

// The smallest spread of some ranges is the gap between the highest low end
// and the lowest high end, the largest from a low end to another's high end.
func TestSpreadOfAColumn(t *testing.T) {
	f := figure(func(a figures.Args) float64 { return slices.Max(a.Column("x")) - slices.Min(a.Column("x")) },
		figures.Input{Name: "x", Path: "corners.*.x", NonEmpty: true})
	for _, n := range []int{2, 4, 8, 20} {
		random := rand.New(rand.NewPCG(uint64(n), 0))
		for range 20 {
			values := figurestest.Fixed{Leaves: map[string]figures.Leaf{}, Lists: map[string][]string{}}
			var lows, highs []float64
			for i := range n {
				low := random.Float64()
				high := low + random.Float64()
				lows, highs = append(lows, low), append(highs, high)
				id := fmt.Sprint(i)
				values.Lists["corners"] = append(values.Lists["corners"], id)
				values.Leaves["corners."+id+".x"] = figurestest.Between(low, high)
			}
			largest := 0.0
			for i, high := range highs {
				for j, low := range lows {
					if i != j {
						largest = max(largest, high-low)
					}
				}
			}
			r := one(t, f, values)
			assert.InDelta(t, max(0, slices.Max(lows)-slices.Min(highs)), r.Low, 1e-9, "%d ranges", n)
			assert.InDelta(t, largest, r.High, 1e-12, "%d ranges", n)
		}
	}
}

// A weighted mean, the usual long figure, costs a few thousand evaluations, and
// the same every time.
func TestCostOfASearch(t *testing.T) {
	for _, n := range []int{1, 2, 3, 5, 8, 15, 30, 60} {
		count := 0
		f := figure(func(a figures.Args) float64 { count++; return moment(a) / total(a) },
			figures.Input{Name: "m", Path: "masses.*.mass"},
			figures.Input{Name: "x", Path: "masses.*.arm", Direction: figures.Rising})
		values, _, _ := items(n, 1)
		first := one(t, f, values)
		cost := count
		assert.Less(t, cost, 10_000, "%d items", n)
		second := one(t, f, values)
		require.Equal(t, cost, count-cost)
		require.Equal(t, first.Low, second.Low)
		require.Equal(t, first.High, second.High)
		t.Logf("%d items: %d evaluations", n, cost)
	}
}

// Known points cost nothing.
func TestExactInputsCostOneEvaluationPerEnd(t *testing.T) {
	count := 0
	f := figure(func(a figures.Args) float64 { count++; return total(a) }, figures.Input{Name: "m", Path: "masses.*.mass"})
	values, mass, _ := items(30, 1)
	for i, id := range values.Lists["masses"] {
		values.Leaves["masses."+id+".mass"] = figurestest.Exact(mass[i].Low)
	}
	one(t, f, values)
	assert.Equal(t, 2, count)
}

func BenchmarkColumnOf30(b *testing.B) {
	values, _, _ := items(30, 1)
	for b.Loop() {
		figures.Evaluate(centre, values)
	}
}

// BenchmarkDecideColumnOf30 asks in vain, which takes longest.
func BenchmarkDecideColumnOf30(b *testing.B) {
	values, _, _ := items(30, 1)
	results, _ := figures.Evaluate(centre, values)
	limit := (results[0].Low + results[0].High) / 2
	for b.Loop() {
		figures.Decide(results[0], figures.AtMost, limit, limit)
	}
}
