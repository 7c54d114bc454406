package figures_test

import (
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"trialfit/internal/figures"
	"trialfit/internal/figures/figurestest"
)

// figure declares a test figure; sums and products of its inputs need no more.
func figure(compute func(figures.Args) float64, inputs ...figures.Input) *figures.Figure {
	return &figures.Figure{ID: "test.figure", Inputs: inputs, Compute: compute}
}

// one evaluates a whole-build figure.
func one(t *testing.T, f *figures.Figure, values figures.Values) figures.Result {
	t.Helper()
	results, state := figures.Evaluate(f, values)
	require.Equal(t, figures.Given, state)
	require.Len(t, results, 1)
	return results[0]
}

// leaves is a Fixed without lists.
func leaves(all map[string]figures.Leaf) figurestest.Fixed {
	return figurestest.Fixed{Leaves: all}
}

func sum(a figures.Args) float64 { return a.At("x") + a.At("y") }

var sumOfTwo = figure(sum,
	figures.Input{Name: "x", Path: "x", Direction: figures.Rising},
	figures.Input{Name: "y", Path: "y", Direction: figures.Rising},
)

func TestWholeBuild(t *testing.T) {
	x := figures.Leaf{State: figures.Given, Low: 1, High: 2, Basis: "measured"}
	y := figures.Leaf{State: figures.Given, Low: 10, High: 20, Basis: "claimed"}
	r := one(t, sumOfTwo, leaves(map[string]figures.Leaf{"x": x, "y": y}))
	require.True(t, r.Ok())
	assert.Equal(t, "build", r.Subject)
	assert.Empty(t, r.IDs)
	assert.Equal(t, 11.0, r.Low)
	assert.Equal(t, 22.0, r.High)
	assert.Equal(t, "claimed", r.Basis)
	x.Path, y.Path = "x", "y"
	assert.Equal(t, []figures.Leaf{x, y}, r.Inputs)
}

func TestZeroResultIsNotOk(t *testing.T) {
	assert.False(t, figures.Result{}.Ok())
}

func TestAllMissingPathsAreReported(t *testing.T) {
	f := figure(sum,
		figures.Input{Name: "y", Path: "y"},
		figures.Input{Name: "x", Path: "x"},
		figures.Input{Name: "x2", Path: "x"},
		figures.Input{Name: "m", Path: "masses.*.mass"},
	)
	r := one(t, f, figurestest.Fixed{})
	assert.False(t, r.Ok())
	assert.Equal(t, []string{"masses", "x", "y"}, r.Missing)
	assert.Empty(t, r.None)
}

func TestNone(t *testing.T) {
	zero := 0.0
	f := figure(sum,
		figures.Input{Name: "x", Path: "x", Direction: figures.Rising},
		figures.Input{Name: "y", Path: "y", Direction: figures.Rising, WhenNone: &zero},
	)
	r := one(t, f, leaves(map[string]figures.Leaf{"x": figurestest.Between(1, 2), "y": figurestest.None()}))
	require.True(t, r.Ok(), "y has a value when it is none")
	assert.Equal(t, 1.0, r.Low)
	assert.Equal(t, 2.0, r.High)
	assert.Len(t, r.Inputs, 2, "a leaf that is none was read all the same")

	r = one(t, f, leaves(map[string]figures.Leaf{"x": figurestest.None()}))
	assert.False(t, r.Ok())
	assert.Equal(t, []string{"x"}, r.None)
	assert.Equal(t, []string{"y"}, r.Missing)
}

func TestBasisIsTheWeakestOfTheGiven(t *testing.T) {
	leaf := func(basis string) figures.Leaf {
		return figures.Leaf{State: figures.Given, Low: 1, High: 1, Basis: basis}
	}
	for _, c := range []struct{ x, y, want string }{
		{"measured", "documented", "documented"},
		{"documented", "claimed", "claimed"},
		{"estimated", "claimed", "estimated"},
		{"measured", "", "measured"},
		{"", "", ""},
	} {
		r := one(t, sumOfTwo, leaves(map[string]figures.Leaf{"x": leaf(c.x), "y": leaf(c.y)}))
		assert.Equal(t, c.want, r.Basis, "%q and %q", c.x, c.y)
	}

	words := figure(sum,
		figures.Input{Name: "x", Path: "x"},
		figures.Input{Name: "y", Path: "y", Choices: map[string]float64{"steel": 1}},
	)
	steel := figures.Leaf{State: figures.Given, Word: "steel", Basis: "claimed"}
	assert.Equal(t, "claimed", one(t, words, leaves(map[string]figures.Leaf{"x": leaf("measured"), "y": steel})).Basis)

	assert.PanicsWithValue(t, `figures: unknown basis "hearsay" of x`, func() {
		figures.Evaluate(sumOfTwo, leaves(map[string]figures.Leaf{"x": leaf("hearsay"), "y": leaf("")}))
	})
}

func TestOutside(t *testing.T) {
	f := figure(func(figures.Args) float64 { panic("called outside the bounds") },
		figures.Input{Name: "x", Path: "x", Valid: figures.Bounds{Low: 0, High: 1}},
		figures.Input{Name: "y", Path: "y", Valid: figures.Bounds{Low: -1, High: 1}},
	)
	r := one(t, f, leaves(map[string]figures.Leaf{
		"x": figurestest.Between(0.5, 1.5), "y": figurestest.Between(-1, 1),
	}))
	assert.False(t, r.Ok())
	assert.Equal(t, []figures.Excess{{Path: "x", Low: 0.5, High: 1.5, Bounds: figures.Bounds{Low: 0, High: 1}}}, r.Outside)
}

func TestChoices(t *testing.T) {
	f := figure(func(a figures.Args) float64 { return a.At("locked") * a.At("x") },
		figures.Input{Name: "locked", Path: "locked", Choices: map[string]float64{"true": 2, "false": 1}},
		figures.Input{Name: "x", Path: "x", Direction: figures.Rising},
	)
	values := leaves(map[string]figures.Leaf{"locked": figurestest.Word("true"), "x": figurestest.Between(3, 4)})
	r := one(t, f, values)
	assert.Equal(t, 6.0, r.Low)
	assert.Equal(t, 8.0, r.High)

	values.Leaves["locked"] = figurestest.Word("maybe")
	assert.PanicsWithValue(t, `figures: test.figure: no number for the word "maybe" of locked`, func() {
		figures.Evaluate(f, values)
	})
}

func TestMistakesInAFigurePanic(t *testing.T) {
	root := figure(func(a figures.Args) float64 { return 1 / a.At("x") }, figures.Input{Name: "x", Path: "x"})
	assert.PanicsWithValue(t, "figures: test.figure: value +Inf within the declared bounds, at {[{x 0}] []}", func() {
		figures.Evaluate(root, leaves(map[string]figures.Leaf{"x": figurestest.Exact(0)}))
	})
	stars := figure(sum, figures.Input{Name: "x", Path: "fittings.*.joints.*.gap"})
	assert.PanicsWithValue(t, "figures: test.figure: input path fittings.*.joints.*.gap leaves more than one star open", func() {
		figures.Evaluate(stars, figurestest.Fixed{})
	})
}

func total(a figures.Args) float64 {
	sum := 0.0
	for _, x := range a.Column("m") {
		sum += x
	}
	return sum
}

func TestColumns(t *testing.T) {
	f := figure(total, figures.Input{Name: "m", Path: "masses.*.mass", Direction: figures.Rising})

	t.Run("in manifest order", func(t *testing.T) {
		values := figurestest.Fixed{
			Leaves: map[string]figures.Leaf{"masses.winch.mass": figurestest.Between(30, 40), "masses.bumper.mass": figurestest.Exact(50)},
			Lists:  map[string][]string{"masses": {"winch", "bumper"}},
		}
		r := one(t, f, values)
		assert.Equal(t, 80.0, r.Low)
		assert.Equal(t, 90.0, r.High)
		assert.Equal(t, "masses.winch.mass", r.Inputs[0].Path)
		assert.Equal(t, "masses.bumper.mass", r.Inputs[1].Path)
	})
	t.Run("a missing leaf of an item", func(t *testing.T) {
		r := one(t, f, figurestest.Fixed{Lists: map[string][]string{"masses": {"winch"}}})
		assert.Equal(t, []string{"masses.winch.mass"}, r.Missing)
	})
	t.Run("no items", func(t *testing.T) {
		for _, ids := range [][]string{nil, {}} {
			r := one(t, f, figurestest.Fixed{Lists: map[string][]string{"masses": ids}})
			require.True(t, r.Ok())
			assert.Zero(t, r.High)
		}
	})
	t.Run("no items where one is needed", func(t *testing.T) {
		mean := figure(func(a figures.Args) float64 { return total(a) / float64(len(a.Column("m"))) },
			figures.Input{Name: "m", Path: "masses.*.mass", NonEmpty: true})
		for _, ids := range [][]string{nil, {}} {
			r := one(t, mean, figurestest.Fixed{Lists: map[string][]string{"masses": ids}})
			assert.False(t, r.Ok())
			assert.Equal(t, []string{"masses"}, r.None)
		}
	})
	t.Run("a formula may sort what it is lent", func(t *testing.T) {
		first := figure(func(a figures.Args) float64 {
			m := a.Column("m")
			y := m[0]
			m[0], m[1] = -1, -1
			return y
		}, figures.Input{Name: "m", Path: "masses.*.mass"})
		r := one(t, first, figurestest.Fixed{
			Leaves: map[string]figures.Leaf{"masses.a.mass": figurestest.Between(1, 2), "masses.b.mass": figurestest.Between(5, 6)},
			Lists:  map[string][]string{"masses": {"a", "b"}},
		})
		assert.Equal(t, 1.0, r.Low)
		assert.Equal(t, 2.0, r.High)
	})
}

func TestPerItem(t *testing.T) {
	f := figure(func(a figures.Args) float64 { return a.At("current")*a.At("length") + total(a) + a.At("supply") },
		figures.Input{Name: "current", Path: "electrical.circuits.*.current", Direction: figures.Rising},
		figures.Input{Name: "length", Path: "electrical.circuits.*.length", Direction: figures.Rising},
		figures.Input{Name: "m", Path: "electrical.circuits.*.joints.*.resistance", Direction: figures.Rising},
		figures.Input{Name: "supply", Path: "electrical.supply", Direction: figures.Rising},
	)
	f.Per = "electrical.circuits"
	values := figurestest.Fixed{
		Leaves: map[string]figures.Leaf{
			"electrical.supply":                               figurestest.Exact(100),
			"electrical.circuits.starter.current":             figurestest.Exact(2),
			"electrical.circuits.starter.length":              figurestest.Between(3, 4),
			"electrical.circuits.starter.joints.a.resistance": figurestest.Exact(10),
			"electrical.circuits.starter.joints.b.resistance": figurestest.Exact(20),
			"electrical.circuits.winch.current":               figurestest.Exact(5),
		},
		Lists: map[string][]string{
			"electrical.circuits":                {"winch", "starter"},
			"electrical.circuits.starter.joints": {"a", "b"},
		},
	}
	results, state := figures.Evaluate(f, values)
	assert.Equal(t, figures.Given, state)
	require.Len(t, results, 2)

	winch := results[0]
	assert.Equal(t, "electrical.circuits.winch", winch.Subject)
	assert.Equal(t, []string{"winch"}, winch.IDs)
	assert.Equal(t, []string{"electrical.circuits.winch.joints", "electrical.circuits.winch.length"}, winch.Missing)

	starter := results[1]
	require.True(t, starter.Ok())
	assert.Equal(t, 136.0, starter.Low)
	assert.Equal(t, 138.0, starter.High)
}

// A list outside Per is a column for each subject.
func TestPerItemWithAForeignColumn(t *testing.T) {
	f := figure(func(a figures.Args) float64 { return a.At("share") * total(a) },
		figures.Input{Name: "share", Path: "axles.*.share", Direction: figures.Rising},
		figures.Input{Name: "m", Path: "masses.*.mass", Direction: figures.Rising},
	)
	f.Per = "axles"
	results, _ := figures.Evaluate(f, figurestest.Fixed{
		Leaves: map[string]figures.Leaf{"axles.front.share": figurestest.Exact(0.5), "masses.a.mass": figurestest.Exact(10), "masses.b.mass": figurestest.Exact(20)},
		Lists:  map[string][]string{"axles": {"front"}, "masses": {"a", "b"}},
	})
	require.Len(t, results, 1)
	assert.Equal(t, 15.0, results[0].High)
}

func TestNestedPer(t *testing.T) {
	f := figure(func(a figures.Args) float64 { return a.At("gap") + a.At("port") },
		figures.Input{Name: "gap", Path: "fittings.*.joints.*.gap", Direction: figures.Rising},
		figures.Input{Name: "port", Path: "fittings.*.port", Direction: figures.Rising},
	)
	f.Per = "fittings.*.joints"
	values := figurestest.Fixed{
		Leaves: map[string]figures.Leaf{
			"fittings.coolant.joints.bushing.gap": figurestest.Exact(1), "fittings.coolant.joints.sender.gap": figurestest.Exact(2),
			"fittings.oil.joints.adapter.gap": figurestest.Exact(3),
			"fittings.coolant.port":           figurestest.Exact(10), "fittings.oil.port": figurestest.Exact(20),
		},
		Lists: map[string][]string{
			"fittings":                {"oil", "coolant"},
			"fittings.coolant.joints": {"bushing", "sender"},
			"fittings.oil.joints":     {"adapter"},
		},
	}
	subjects := func() (names []string, state figures.State) {
		results, state := figures.Evaluate(f, values)
		for _, r := range results {
			names = append(names, r.Subject)
		}
		return names, state
	}

	results, state := figures.Evaluate(f, values)
	assert.Equal(t, figures.Given, state)
	require.Len(t, results, 3)
	assert.Equal(t, "fittings.coolant.joints.bushing", results[1].Subject)
	assert.Equal(t, []string{"coolant", "bushing"}, results[1].IDs)
	assert.Equal(t, []float64{23, 11, 12}, []float64{results[0].Low, results[1].Low, results[2].Low})

	delete(values.Lists, "fittings.oil.joints")
	names, state := subjects()
	assert.Equal(t, figures.Missing, state, "one inner list is missing")
	assert.Equal(t, []string{"fittings.coolant.joints.bushing", "fittings.coolant.joints.sender"}, names)

	values.Lists["fittings.oil.joints"] = nil
	names, state = subjects()
	assert.Equal(t, figures.Given, state, "one inner list is none, the other has items")
	assert.Len(t, names, 2)

	values.Lists["fittings.coolant.joints"] = nil
	names, state = subjects()
	assert.Equal(t, figures.None, state, "all inner lists are none")
	assert.Empty(t, names)
}

func TestPerListState(t *testing.T) {
	f := figure(total)
	f.Per = "axles"
	for _, c := range []struct {
		lists map[string][]string
		want  figures.State
	}{
		{nil, figures.Missing},
		{map[string][]string{"axles": nil}, figures.None},
		{map[string][]string{"axles": {}}, figures.Given},
	} {
		results, state := figures.Evaluate(f, figurestest.Fixed{Lists: c.lists})
		assert.Empty(t, results)
		assert.Equal(t, c.want, state)
	}
}

func TestAt(t *testing.T) {
	f := figure(sum,
		figures.Input{Name: "x", Path: "x", Direction: figures.Rising, Valid: figures.Bounds{Low: 0, High: 5}},
		figures.Input{Name: "y", Path: "y", Direction: figures.Rising},
	)
	r := one(t, f, leaves(map[string]figures.Leaf{"x": figurestest.Between(1, 2), "y": figurestest.Between(10, 20)}))

	low, high, ok := r.At(map[string]figures.Range{"x": {Low: 3, High: 4}})
	require.True(t, ok)
	assert.Equal(t, 13.0, low)
	assert.Equal(t, 24.0, high)

	_, _, ok = r.At(map[string]figures.Range{"x": {Low: 3, High: 6}})
	assert.False(t, ok, "outside the bounds")
	_, _, ok = r.At(map[string]figures.Range{"z": {}})
	assert.False(t, ok, "not an input")
	assert.Equal(t, 22.0, r.High, "the result itself stays")

	_, _, ok = figures.Result{}.At(nil)
	assert.False(t, ok)
}

// A figure with a condition has a value only where the bounded figure keeps its
// bounds over the whole range.
func TestConditions(t *testing.T) {
	share := figure(func(a figures.Args) float64 { return a.At("x") / sum(a) }, sumOfTwo.Inputs...)
	share.Conditions = []figures.Condition{{Figure: sumOfTwo, Valid: figures.Bounds{Low: 1, High: 10}}}

	r := one(t, share, leaves(map[string]figures.Leaf{"x": figurestest.Exact(1), "y": figurestest.Between(0, 3)}))
	require.True(t, r.Ok())
	_, _, ok := r.At(map[string]figures.Range{"y": {Low: 0, High: 9}})
	assert.True(t, ok)
	_, _, ok = r.At(map[string]figures.Range{"y": {Low: 0, High: 9.5}})
	assert.False(t, ok, "beyond the condition with the leaf replaced")

	r = one(t, share, leaves(map[string]figures.Leaf{"x": figurestest.Exact(1), "y": figurestest.Between(-2, 3)}))
	assert.False(t, r.Ok())
	assert.Equal(t, []figures.Excess{{Path: sumOfTwo.ID, Low: -1, High: 4, Bounds: figures.Bounds{Low: 1, High: 10}}}, r.Outside)

	r = one(t, share, leaves(map[string]figures.Leaf{"x": figurestest.Exact(1)}))
	assert.Equal(t, []string{"y"}, r.Missing)
	assert.Empty(t, r.Outside, "nothing is known to be outside")
	low, _, ok := r.At(map[string]figures.Range{"y": {Low: 1, High: 1}})
	assert.True(t, ok)
	assert.Equal(t, 0.5, low)
}
