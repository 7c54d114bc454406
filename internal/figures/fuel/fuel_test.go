package fuel_test

import (
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"trialfit/internal/figures"
	"trialfit/internal/figures/figurestest"
	"trialfit/internal/figures/fuel"
)

func TestRanges(t *testing.T) {
	for _, f := range fuel.Figures() {
		t.Run(f.ID, func(t *testing.T) { figurestest.Sample(t, f, 300) })
	}
}

func TestBadInput(t *testing.T) {
	for _, f := range fuel.Figures() {
		figurestest.Refuses(t, f)
	}
}

// A wider line is offered where the suction is too strong on a cold day.
func TestHoseEnough(t *testing.T) {
	narrow := truck()
	narrow.Leaves["fuel.supply_bore"] = figurestest.Exact(0.006)
	r := result(t, "fuel.suction_cold_use", narrow)
	assert.Greater(t, r.Low, 1.0)
	path, size, ok := figures.Enough(r, figures.AtMost, 1, 1, nil)
	require.True(t, ok)
	assert.Equal(t, "fuel.supply_bore", path)
	assert.Equal(t, "5/16 in", size.Label)
}

// Without a return the engine draws what it burns.
func TestNoReturn(t *testing.T) {
	lost := truck()
	lost.Leaves["fuel.return_flow"] = figurestest.None()
	assert.Equal(t, figure(t, "fuel.full_load_burn"), result(t, "fuel.supply_flow", lost).Low)
}

// A gauge made for one value alone shows nothing.
func TestGaugeWithoutSpan(t *testing.T) {
	dead := truck()
	dead.Leaves["fuel.gauge.full"] = dead.Leaves["fuel.gauge.empty"]
	r := result(t, "fuel.gauge_reading_full", dead)
	require.Len(t, r.Outside, 1)
	assert.Equal(t, "fuel.gauge_span", r.Outside[0].Path)
}

// A petrol sender on a diesel cluster that runs the other way shows full when
// the tank is empty.
func TestGaugeOtherWayRound(t *testing.T) {
	swapped := truck()
	swapped.Leaves["fuel.sender.empty"], swapped.Leaves["fuel.sender.full"] = swapped.Leaves["fuel.sender.full"], swapped.Leaves["fuel.sender.empty"]
	assert.InDelta(t, 1, result(t, "fuel.gauge_reading_empty", swapped).Low, 1e-12)
	assert.InDelta(t, 0, result(t, "fuel.gauge_reading_full", swapped).Low, 1e-12)
}

// truck is an invented diesel conversion.
func truck() figurestest.Fixed {
	return figurestest.Fixed{Leaves: map[string]figures.Leaf{
		"engine.rated_power":      figurestest.Exact(95e3),
		"engine.injection":        figurestest.Word("mechanical-rotary"),
		"fuel.consumption_full":   figurestest.Exact(0.230 / kWh),
		"fuel.consumption_cruise": figurestest.Exact(0.240 / kWh),
		"fuel.density":            figurestest.Exact(835),
		"fuel.cruise_power":       figurestest.Exact(35e3),
		"fuel.cruise_speed":       figurestest.Exact(90 / 3.6),
		"fuel.return_flow":        figurestest.Exact(77.832335 * litre / hour), // 104 L/h in all
		"fuel.lift_pump_flow":     figurestest.Exact(150 * litre / hour),
		"fuel.supply_bore":        figurestest.Exact(0.008),
		"fuel.supply_length":      figurestest.Exact(4),
		"fuel.lift_height":        figurestest.Exact(0.5),
		"fuel.viscosity_warm":     figurestest.Exact(4e-6),
		"fuel.viscosity_cold":     figurestest.Exact(12e-6),
		"fuel.suction_limit":      figurestest.Exact(5 * 3386.389),
		"fuel.tank_capacity":      figurestest.Exact(73.6 * litre),
		"fuel.consumption":        figurestest.Exact(11.5 * litre / km100),
		"fuel.filter_rating":      figurestest.Exact(5e-6),
		"fuel.gauge.empty":        figurestest.Exact(240),
		"fuel.gauge.full":         figurestest.Exact(33),
		"fuel.sender.empty":       figurestest.Exact(240),
		"fuel.sender.full":        figurestest.Exact(33),
	}}
}

func result(t *testing.T, id string, values figurestest.Fixed) figures.Result {
	t.Helper()
	return figurestest.Result(t, fuel.Figures(), id, values)
}

// figure is the value of a figure for the truck.
func figure(t *testing.T, id string) float64 {
	t.Helper()
	r := result(t, id, truck())
	require.True(t, r.Ok(), "%s: %+v", id, r)
	return r.Low
}
