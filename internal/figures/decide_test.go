package figures_test

import (
	"math"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"trialfit/internal/figures"
	"trialfit/internal/figures/figurestest"
)

// sumOf evaluates x + y over ranges.
func sumOf(t *testing.T, x, y figures.Leaf) figures.Result {
	t.Helper()
	return one(t, sumOfTwo, leaves(map[string]figures.Leaf{"x": x, "y": y}))
}

// By hand: x = 10 ± 4, y = 20 ± 1, so x + y = 30 ± 5, limit 32. With x = 10 ± h
// the sum is at most 10 + h + 21, which meets 32 from h = 1 down. With y exact
// it still reaches 34, so y alone does not help.
func TestDecideSingleLeaf(t *testing.T) {
	r := sumOf(t, figurestest.Between(6, 14), figurestest.Between(19, 21))
	want := &figures.Decider{Paths: []string{"x"}, Now: []float64{4}, Need: []float64{1}}
	assert.Equal(t, want, figures.Decide(r, figures.AtMost, 32, 32))

	// The same from below: at least 28 needs 10 - h + 19 >= 28, h = 1.
	assert.Equal(t, want, figures.Decide(r, figures.AtLeast, 28, 28))

	// Settled the other way: at most 28 is certainly not met when the sum
	// lies above 28: 10 - h + 19 > 28 holds short of h = 1.
	want.Need = []float64{0.99}
	assert.Equal(t, want, figures.Decide(r, figures.AtMost, 28, 28))
}

// By hand: 10 ± h + 20 ± 1 at most 31.337 asks for h up to 0.337.
func TestDecideRoundsDown(t *testing.T) {
	r := sumOf(t, figurestest.Between(6, 14), figurestest.Between(19, 21))
	d := figures.Decide(r, figures.AtMost, 31.337, 31.337)
	require.NotNil(t, d)
	assert.Equal(t, []float64{0.33}, d.Need)
}

// By hand: 5000 ± 1001 + 0 ± 1 at most 6001 asks for h up to 1000.
func TestDecideKeepsPowersOfTen(t *testing.T) {
	r := sumOf(t, figurestest.Between(3999, 6001), figurestest.Between(-1, 1))
	assert.Equal(t, []float64{1000}, figures.Decide(r, figures.AtMost, 6001, 6001).Need)
}

// By hand: x = 10 ± 4, y = 20 ± 5, at most 35: x needs h <= 10 + h + 25 <= 35,
// h = 0, too little to measure; y needs 14 + 20 + h <= 35, h = 1.
func TestDecideChoosesTheLeastTightening(t *testing.T) {
	r := sumOf(t, figurestest.Between(6, 14), figurestest.Between(15, 25))
	assert.Equal(t, &figures.Decider{Paths: []string{"y"}, Now: []float64{5}, Need: []float64{1}},
		figures.Decide(r, figures.AtMost, 35, 35))

	// At most 37: x may keep 2 of 4, y 3 of 5.
	assert.Equal(t, []string{"y"}, figures.Decide(r, figures.AtMost, 37, 37).Paths)
}

// By hand: x = 10 ± 4, y = 20 ± 4, at most 32: neither alone is enough
// (10 + 24, 14 + 20 > 32); both at ± 1 are, a quarter of what they have.
func TestDecidePair(t *testing.T) {
	r := sumOf(t, figurestest.Between(6, 14), figurestest.Between(16, 24))
	assert.Equal(t, &figures.Decider{Paths: []string{"x", "y"}, Now: []float64{4, 4}, Need: []float64{1, 1}},
		figures.Decide(r, figures.AtMost, 32, 32))
}

// Among three leaves the pair with the largest share wins.
func TestDecidePairOfThree(t *testing.T) {
	f := figure(func(a figures.Args) float64 { return a.At("a") + a.At("b") + a.At("c") },
		figures.Input{Name: "a", Path: "a", Direction: figures.Rising},
		figures.Input{Name: "b", Path: "b", Direction: figures.Rising},
		figures.Input{Name: "c", Path: "c", Direction: figures.Rising},
	)
	r := one(t, f, leaves(map[string]figures.Leaf{
		"a": figurestest.Between(-1, 1), "b": figurestest.Between(-4, 4), "c": figurestest.Between(-3, 3),
	}))
	// At most 3.1: b alone leaves 4, and b with c 1 + 7s <= 3.1, s = 0.3.
	d := figures.Decide(r, figures.AtMost, 3.1, 3.1)
	require.NotNil(t, d)
	assert.Equal(t, []string{"b", "c"}, d.Paths)
	assert.InDelta(t, 1.2, d.Need[0], 0.101)
	assert.InDelta(t, 0.9, d.Need[1], 0.011)
}

func TestDecideNothing(t *testing.T) {
	r := sumOf(t, figurestest.Between(6, 14), figurestest.Between(16, 24))
	assert.Nil(t, figures.Decide(r, figures.AtMost, 38, 38), "met")
	assert.Nil(t, figures.Decide(r, figures.AtMost, 21, 21), "not met")
	assert.Nil(t, figures.Decide(r, figures.AtLeast, 22, 22), "met from below")
	assert.Nil(t, figures.Decide(r, figures.AtMost, 25, 35), "the limit itself is too wide")
	assert.Nil(t, figures.Decide(one(t, sumOfTwo, figurestest.Fixed{}), figures.AtMost, 1, 1), "no value")
	assert.Panics(t, func() { figures.Decide(r, "less than", 1, 1) })
}

// cable is the voltage drop of a copper pair, ρ·2·l·I/A.
func cable(sizes *figures.Series) *figures.Figure {
	return figure(func(a figures.Args) float64 {
		return 1.72e-8 * 2 * a.At("length") * a.At("current") / a.At("area")
	},
		figures.Input{Name: "length", Path: "length", Direction: figures.Rising},
		figures.Input{Name: "current", Path: "current", Direction: figures.Rising},
		figures.Input{Name: "area", Path: "area", Direction: figures.Falling, Series: sizes, Valid: figures.Bounds{Low: 1e-6, High: 2e-4}},
	)
}

var metric = &figures.Series{Title: "copper cable, mm²", Sizes: []figures.Size{
	{Label: "0.5 mm²", SI: 0.5e-6}, {Label: "10 mm²", SI: 10e-6}, {Label: "16 mm²", SI: 16e-6}, {Label: "25 mm²", SI: 25e-6}, {Label: "35 mm²", SI: 35e-6},
}}

// By hand: 3 m to 4 m at 100 A, at most 0.6 V: A >= 3.44e-8·4·100/0.6 =
// 22.9 mm², so 25 mm²; at most 1 V: 13.8 mm², so 16 mm².
func TestEnough(t *testing.T) {
	given := map[string]figures.Leaf{"length": figurestest.Between(3, 4), "current": figurestest.Exact(100)}
	for _, c := range []struct {
		name string
		area figures.Leaf
	}{
		{"given", figurestest.Exact(10e-6)},
		{"missing", figures.Leaf{}},
		{"none", figurestest.None()},
		{"outside", figurestest.Exact(0.5e-6)},
	} {
		t.Run(c.name, func(t *testing.T) {
			given["area"] = c.area
			r := one(t, cable(metric), leaves(given))
			path, size, ok := figures.Enough(r, figures.AtMost, 0.6, 0.6, nil)
			require.True(t, ok)
			assert.Equal(t, "area", path)
			assert.Equal(t, "25 mm²", size.Label)
			_, size, ok = figures.Enough(r, figures.AtMost, 1, 1, nil)
			require.True(t, ok)
			assert.Equal(t, "16 mm²", size.Label)

			_, _, ok = figures.Enough(r, figures.AtMost, 0.1, 0.1, nil)
			assert.False(t, ok, "no size is large enough")
			_, size, ok = figures.Enough(r, figures.AtLeast, 0.6, 0.6, nil)
			require.True(t, ok, "the size outside the bounds is passed over")
			assert.Equal(t, "10 mm²", size.Label)
		})
	}
}

// A conductor written in mm² is bought in mm², one written in AWG in AWG.
func TestEnoughAsWritten(t *testing.T) {
	both := &figures.Series{Title: "copper cable, AWG", Metric: metric, Sizes: []figures.Size{{Label: "3 AWG", SI: 26.7e-6}}}
	r := one(t, cable(both), leaves(map[string]figures.Leaf{
		"length": figurestest.Exact(4), "current": figurestest.Exact(100), "area": figurestest.Exact(10e-6),
	}))
	for inMetric, want := range map[bool]string{true: "25 mm²", false: "3 AWG"} {
		_, size, ok := figures.Enough(r, figures.AtMost, 0.6, 0.6, func(path string) bool { return inMetric && path == "area" })
		require.True(t, ok)
		assert.Equal(t, want, size.Label)
	}
}

func TestNotEnough(t *testing.T) {
	given := map[string]figures.Leaf{"length": figurestest.Exact(3), "area": figurestest.Exact(10e-6)}
	_, _, ok := figures.Enough(one(t, cable(metric), leaves(given)), figures.AtMost, 0.6, 0.6, nil)
	assert.False(t, ok, "the current is missing")

	given["current"] = figurestest.Exact(100)
	_, _, ok = figures.Enough(one(t, cable(nil), leaves(given)), figures.AtMost, 0.6, 0.6, nil)
	assert.False(t, ok, "no series")
	_, _, ok = figures.Enough(figures.Result{}, figures.AtMost, 0.6, 0.6, nil)
	assert.False(t, ok, "no result")
}

// Whatever Decide asks for must indeed settle the question.
func TestWhatDecideAsksForSettles(t *testing.T) {
	f := plane(func(x, y float64) float64 { return math.Abs(x-y) * (1 + x*x) })
	x, y := figures.Range{Low: 0.2, High: 1.1}, figures.Range{Low: 0.9, High: 2.3}
	r := one(t, f, leaves(map[string]figures.Leaf{"x": figurestest.Between(x.Low, x.High), "y": figurestest.Between(y.Low, y.High)}))
	asked := 0
	for limit := 0.01; limit < r.High; limit += 0.03 {
		d := figures.Decide(r, figures.AtMost, limit, limit)
		if d == nil {
			continue
		}
		asked++
		windows := map[string]figures.Range{}
		for i, path := range d.Paths {
			middle := map[string]float64{"x": 0.65, "y": 1.6}[path]
			windows[path] = figures.Range{Low: middle - d.Need[i], High: middle + d.Need[i]}
			assert.LessOrEqual(t, d.Need[i], d.Now[i])
		}
		low, high, ok := r.At(windows)
		require.True(t, ok)
		assert.True(t, high <= limit+1e-12 || low > limit-1e-12, "limit %v: %v to %v", limit, low, high)
	}
	assert.Greater(t, asked, 10)
}
