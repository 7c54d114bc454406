package exhaust_test

import (
	"math"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"trialfit/internal/figures"
	"trialfit/internal/figures/air"
	"trialfit/internal/figures/exhaust"
	"trialfit/internal/figures/figurestest"
	"trialfit/internal/figures/fluid"
)

const (
	rpm     = 2 * math.Pi / 60
	gramKWh = 1 / 3.6e9 // kg/J
	hot     = 480 + celsius
)

var (
	downpipe = exhaust.Stretch{Bore: 0.073, Length: 0.8, Bends: 2 * 20, After: 0.098}
	tailpipe = exhaust.Stretch{Bore: 0.098, Length: 3, Bends: 3 * 15, Before: 0.073, Part: 2_000}
)

// One truck, every figure: what the declarations feed to the formulas.
func TestTruck(t *testing.T) {
	density := fluid.AirDensity(fluid.Atmosphere+130_000, 323.15)
	mass := air.EngineFlow(3.9e-3, 2600*rpm, 0.88, density) + 93_000*230*gramKWh
	all := downpipe.Drop(mass, hot) + tailpipe.Drop(mass, hot)
	for id, want := range map[string]float64{
		"exhaust.mass_flow":            mass,
		"exhaust.volume_flow":          mass / fluid.AirDensity(fluid.Atmosphere, hot),
		"exhaust.pipe_drop":            all,
		"exhaust.pipe_drop_use":        all / 10_000,
		"exhaust.growth":               exhaust.Steel.Growth(3.8, hot),
		"exhaust.growth_use":           exhaust.Steel.Growth(3.8, hot) / 0.03,
		"exhaust.brake_distance_bores": 0.35 / 0.073,
		"exhaust.brake_area_ratio":     1.802214,
	} {
		r := results(t, id, truck())[0]
		require.True(t, r.Ok(), "%s: %+v", id, r)
		assert.InEpsilon(t, want, r.Low, 1e-6, id)
	}
	drops := results(t, "exhaust.segment_drop", truck())
	require.Len(t, drops, 2)
	assert.InEpsilon(t, downpipe.Drop(mass, hot), drops[0].Low, 1e-9)
	assert.InEpsilon(t, tailpipe.Drop(mass, hot), drops[1].Low, 1e-9)
	assert.Len(t, exhaust.Figures(), 10)
}

// A step counts once, in the narrower stretch; a part of the run on its own has none.
func TestStepsCountInTheNarrower(t *testing.T) {
	alone, joined := downpipe, downpipe
	alone.After = 0
	assert.Less(t, alone.Drop(0.2, hot), joined.Drop(0.2, hot))
	wide := tailpipe
	wide.Before = 0
	assert.InEpsilon(t, wide.Drop(0.2, hot), tailpipe.Drop(0.2, hot), 1e-12)
}

func TestNoRunNoDrop(t *testing.T) {
	none := truck()
	none.Lists["exhaust.segments"] = nil
	assert.Equal(t, []string{"exhaust.segments"}, results(t, "exhaust.pipe_drop", none)[0].None)
	delete(none.Lists, "exhaust.segments")
	assert.Equal(t, []string{"exhaust.segments"}, results(t, "exhaust.growth", none)[0].Missing)
}

func TestBadValuesAreOutside(t *testing.T) {
	for path, id := range map[string]string{
		"exhaust.segments.down.bore":   "exhaust.segment_speed",
		"exhaust.segments.down.length": "exhaust.segment_drop",
		"exhaust.segments.tail.bends":  "exhaust.pipe_drop",
		"exhaust.temperature":          "exhaust.volume_flow",
		"exhaust.flexible_travel":      "exhaust.growth_use",
		"exhaust.back_pressure_limit":  "exhaust.pipe_drop_use",
		"exhaust.brake.bore":           "exhaust.brake_area_ratio",
	} {
		for _, bad := range []float64{-1, 1e9} {
			broken := truck()
			broken.Leaves[path] = figurestest.Exact(bad)
			r := results(t, id, broken)[0]
			require.NotEmpty(t, r.Outside, "%s of %v", path, bad)
			assert.Equal(t, path, r.Outside[0].Path)
		}
	}
}

func TestEnoughPipe(t *testing.T) {
	path, size, ok := figures.Enough(results(t, "exhaust.segment_speed", truck())[0], figures.AtMost, 90, 90, nil)
	require.True(t, ok)
	assert.Equal(t, "exhaust.segments.down.bore", path)
	assert.Equal(t, "3 1/2 in tube", size.Label)
}

func TestRanges(t *testing.T) {
	for _, f := range exhaust.Figures() {
		t.Run(f.ID, func(t *testing.T) { figurestest.Sample(t, f, 300) })
	}
}

func truck() figurestest.Fixed {
	return figurestest.Fixed{
		Leaves: map[string]figures.Leaf{
			"engine.displacement":               figurestest.Exact(3.9e-3),
			"engine.rated_speed":                figurestest.Exact(2600 * rpm),
			"engine.rated_power":                figurestest.Exact(93_000),
			"fuel.consumption_full":             figurestest.Exact(230 * gramKWh),
			"intake.volumetric_efficiency":      figurestest.Exact(0.88),
			"charge_air.boost":                  figurestest.Exact(130_000),
			"charge_air.manifold_in":            figurestest.Exact(323.15),
			"exhaust.temperature":               figurestest.Exact(hot),
			"exhaust.material":                  figurestest.Word("steel"),
			"exhaust.flexible_travel":           figurestest.Exact(0.03),
			"exhaust.back_pressure_limit":       figurestest.Exact(10_000),
			"exhaust.downpipe_bore":             figurestest.Exact(0.073),
			"exhaust.brake.bore":                figurestest.Exact(0.098),
			"exhaust.brake.distance":            figurestest.Exact(0.35),
			"exhaust.segments.down.bore":        figurestest.Exact(0.073),
			"exhaust.segments.down.bore_before": figurestest.None(),
			"exhaust.segments.down.bore_after":  figurestest.Exact(0.098),
			"exhaust.segments.down.length":      figurestest.Exact(0.8),
			"exhaust.segments.down.bends":       figurestest.Exact(2),
			"exhaust.segments.down.bend":        figurestest.Word("long-90"),
			"exhaust.segments.down.part_drop":   figurestest.None(),
			"exhaust.segments.tail.bore":        figurestest.Exact(0.098),
			"exhaust.segments.tail.bore_before": figurestest.Exact(0.073),
			"exhaust.segments.tail.bore_after":  figurestest.None(),
			"exhaust.segments.tail.length":      figurestest.Exact(3),
			"exhaust.segments.tail.bends":       figurestest.Exact(3),
			"exhaust.segments.tail.bend":        figurestest.Word("elbow-45"),
			"exhaust.segments.tail.part_drop":   figurestest.Exact(2_000),
		},
		Lists: map[string][]string{"exhaust.segments": {"down", "tail"}},
	}
}

func results(t *testing.T, id string, values figurestest.Fixed) []figures.Result {
	t.Helper()
	for _, f := range exhaust.Figures() {
		if f.ID == id {
			all, _ := figures.Evaluate(f, values)
			require.NotEmpty(t, all)
			return all
		}
	}
	require.Fail(t, "no figure", id)
	return nil
}
