package formula_test

import (
	"testing"

	"github.com/stretchr/testify/require"

	"trialfit/internal/figures"
	"trialfit/internal/figures/sheet"
	"trialfit/internal/report/figuresheet/formula"
)

// figure makes one whose inputs are a, b, … at made.up paths.
func figure(text string, compute func(figures.Args) float64, names ...string) *figures.Figure {
	f := &figures.Figure{ID: "test.figure", Formula: text, Compute: compute}
	for _, name := range names {
		f.Inputs = append(f.Inputs, figures.Input{Name: name, Path: "made.up." + name, Valid: figures.Bounds{Low: 1, High: 50}})
	}
	return f
}

func quotient(a figures.Args) float64 { return a.At("a") / a.At("b") }

func TestPutIn(t *testing.T) {
	tests := []struct {
		figure *figures.Figure
		want   string // "" where there must be no reading
	}{
		{figure("q = a/b", quotient, "a", "b"), "q = <a>/<b>"},
		{figure("a / b, a the load, b the rating", quotient, "a", "b"), "<a> / <b>"},
		{figure("load / rating", quotient, "a", "b"), "<a> / <b>"},
		{figure("q = 1/r, r = b/a", quotient, "a", "b"), "q = 1/r, r = <b>/<a>"},
		{figure("q = 2·b/a, the other way round", quotient, "a", "b"), ""},
		{figure("b / a", quotient, "a", "b"), ""},
		{figure("a / b / c", quotient, "a", "b"), ""},
		{figure("the smaller of a and b", quotient, "a", "b"), ""},
		{figure("q = Σ a/b over the list", quotient, "a", "b"), ""},
		{figure("q = r, r = q", quotient, "a", "b"), ""},
		{figure("q = (a/b", quotient, "a", "b"), ""},
		{figure("", quotient, "a", "b"), ""},
		// Only the whole of a name is one.
		{figure("q = a/b'", func(a figures.Args) float64 { return a.At("a") / a.At("b'") }, "a", "b", "b'"), "q = <a>/<b'>"},
		{figure("s = a² + |b − a|·√(4·a)", func(a figures.Args) float64 {
			x, y := a.At("a"), a.At("b")
			return x*x + max(y-x, x-y)*root(4*x)
		}, "a", "b"), "s = <a>² + |<b> − <a>|·√(4·<a>)"},
		// Constants carry their units: 36 km/h are 10 m/s, 20 °C are 293.15 K.
		{figure("v = a·36 km/h", func(a figures.Args) float64 { return 10 * a.At("a") }, "a"), "v = <a>·36 km/h"},
		{figure("k = a·(b + 20 °C)", func(a figures.Args) float64 { return a.At("a") * (a.At("b") + 293.15) }, "a", "b"), "k = <a>·(<b> + 20 °C)"},
		{figure("k = a·(b + 293)", func(a figures.Args) float64 { return a.At("a") * (a.At("b") + 293.15) }, "a", "b"), "k = <a>·(<b> + 293)"},
		{figure("k = a·36", func(a figures.Args) float64 { return 10 * a.At("a") }, "a"), ""},
	}
	for _, tc := range tests {
		t.Run(tc.figure.Formula, func(t *testing.T) {
			r := formula.Read(tc.figure)
			if tc.want == "" {
				require.Nil(t, r)
				return
			}
			require.NotNil(t, r)
			require.Equal(t, tc.want, r.PutIn(func(name string) string { return "<" + name + ">" }))
		})
	}
}

func root(x float64) float64 {
	r := x
	for range 60 {
		r = (r + x/r) / 2
	}
	return r
}

// TestWordsFindTheirInput: where the arithmetic fits both ways, words decide.
func TestWordsFindTheirInput(t *testing.T) {
	f := &figures.Figure{
		ID: "test.sum", Formula: "tackle + load of the engine",
		Inputs: []figures.Input{
			{Name: "m", Path: "lifts.load", Valid: figures.Bounds{Low: 1, High: 50}},
			{Name: "mt", Path: "lifts.tackle", Valid: figures.Bounds{Low: 1, High: 50}},
		},
		Compute: func(a figures.Args) float64 { return a.At("m") + a.At("mt") },
	}
	require.Equal(t, "[mt] + [m]", formula.Read(f).PutIn(func(name string) string { return "[" + name + "]" }))
}

// TestManyFormulasAreRead: sums, tables and formulas in words aside.
func TestManyFormulasAreRead(t *testing.T) {
	read := 0
	for _, f := range sheet.All() {
		if formula.Read(f) != nil {
			read++
		}
	}
	require.Greater(t, 3*read, len(sheet.All()), "%d of %d", read, len(sheet.All()))
}

// TestUnits: what has to be known before numbers can stand in a formula.
func TestUnits(t *testing.T) {
	rise := formula.Read(figure("k·(a − b)/(a − 20 °C), k = 2", func(a figures.Args) float64 {
		return 2 * (a.At("a") - a.At("b")) / (a.At("a") - 293.15)
	}, "a", "b"))
	require.NotNil(t, rise)
	require.True(t, rise.OnlyDifferences([]string{"a", "b"}))

	ratio := formula.Read(figure("a/b", quotient, "a", "b"))
	require.False(t, ratio.OnlyDifferences([]string{"a", "b"}), "20 °C are not twice 10 °C")
	degree, ok := ratio.Degree([]string{"a", "b"})
	require.True(t, ok)
	require.Zero(t, degree)
	degree, ok = ratio.Degree([]string{"a"})
	require.True(t, ok)
	require.Equal(t, 1, degree)

	sum := formula.Read(figure("a + b", func(a figures.Args) float64 { return a.At("a") + a.At("b") }, "a", "b"))
	_, ok = sum.Degree([]string{"a"})
	require.False(t, ok)
}

func TestConsistent(t *testing.T) {
	weight := figure("W = m·9.81", func(a figures.Args) float64 { return 9.81 * a.At("m") }, "m")
	require.False(t, formula.Read(weight).Consistent(map[string]string{"m": "kg"}, "N"), "2950 lb times 9.81 is nothing")
	weight.Formula = "W = m·9.81 m/s²"
	require.True(t, formula.Read(weight).Consistent(map[string]string{"m": "kg"}, "N"))
	require.False(t, formula.Read(weight).Consistent(map[string]string{"m": "kg"}, "kg"))
	require.False(t, formula.Read(weight).Consistent(map[string]string{"m": "dB(A)"}, "N"), "no unit to be trusted")

	heat := figure("P = a·1.007 kJ/(kg·K)·b", func(a figures.Args) float64 { return 1007 * a.At("a") * a.At("b") }, "a", "b")
	require.True(t, formula.Read(heat).Consistent(map[string]string{"a": "kg/s", "b": "K"}, "W"))
	ratio := formula.Read(figure("a²/b²", func(a figures.Args) float64 { return quotient(a) * quotient(a) }, "a", "b"))
	require.True(t, ratio.Consistent(map[string]string{"a": "m³/s", "b": "m³/s"}, "1"))
	require.False(t, ratio.Consistent(map[string]string{"a": "m³/s", "b": "kg/s"}, "1"))
}
